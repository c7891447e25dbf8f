// Addresses that scripts are loaded from, under a policy that enforces Trusted Types: all of them pass here.
import { trustedPolicy } from "./trusted-types";

const ownScript = (address: string): string => {
  const { protocol, origin } = new URL(address, location.href);
  // A blob has the origin of the page that made it.
  if (protocol !== "blob:" && origin !== location.origin)
    throw new TypeError(`a script of another origin: ${address}`);
  return address;
};

let policy: { createScriptURL: typeof ownScript } | null = null;

/**
 * The address as a browser takes it for a script.
 * @throws where it is of another origin, or where the page's policy does not know the name "saddlerule"
 */
export function scriptAddress(address: string): string {
  policy ??= trustedPolicy("saddlerule", { createScriptURL: ownScript });
  return policy.createScriptURL(address);
}
