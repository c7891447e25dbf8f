// Addresses that scripts are loaded from, under a policy that enforces Trusted Types: all of them pass here.

/** What a page's Content-Security-Policy calls this in `trusted-types`. */
const policyName = "saddlerule";

/** As browsers have it that know Trusted Types (https://www.w3.org/TR/trusted-types/); the compiler does not yet. */
interface TrustedTypes {
  createPolicy: (
    name: string,
    rules: { createScriptURL: (address: string) => string },
  ) => { createScriptURL: (address: string) => string };
}

const ownScript = (address: string): string => {
  const { protocol, origin } = new URL(address, location.href);
  // A blob has the origin of the page that made it.
  if (protocol !== "blob:" && origin !== location.origin)
    throw new TypeError(`a script of another origin: ${address}`);
  return address;
};

let policy: ReturnType<TrustedTypes["createPolicy"]> | null = null;

/**
 * The address as a browser takes it for a script.
 * @throws where it is of another origin, or where the page's policy does not know the name "saddlerule"
 */
export function scriptAddress(address: string): string {
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };
  policy ??= trustedTypes?.createPolicy(policyName, { createScriptURL: ownScript }) ?? {
    createScriptURL: ownScript,
  };
  return policy.createScriptURL(address);
}
