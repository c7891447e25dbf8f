// The address in the code on a bike's tag: that of the page that is open, which opens it at that bike.

/** null: the page has no address that a phone could open. */
export type TagAddresses = (id: string) => string | null;

const plain = (value: string): string => encodeURIComponent(value).replaceAll("%2F", "/");

/** @param kept what the page's own address says behind its # and has to say again, such as where the list is */
export function tagAddress(address: string, id: string, kept: readonly string[]): string {
  const [page = "", hash = ""] = address.split("#");
  const said = new URLSearchParams(hash);
  const parts = [...kept.map((name) => [name, said.get(name)]), ["bike", id]];
  return `${page}#${parts.flatMap(([name, value]) => (value ? `${name}=${plain(value)}` : [])).join("&")}`;
}

export function tagAddresses(kept: readonly string[]): TagAddresses {
  return (id) => (/^https?:$/.test(location.protocol) ? tagAddress(location.href, id, kept) : null);
}
