// Policies of Trusted Types (https://www.w3.org/TR/trusted-types/), which the compiler does not know yet.

interface TrustedTypes {
  createPolicy: <Rules extends object>(name: string, rules: Rules) => Rules;
}

/**
 * What lets texts through by these rules, as a browser takes them for scripts; the rules themselves where it knows no Trusted Types.
 * @param name what the page's Content-Security-Policy calls this in `trusted-types`
 * @throws where that policy does not know the name
 */
export function trustedPolicy<Rules extends object>(name: string, rules: Rules): Rules {
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };
  return trustedTypes?.createPolicy(name, rules) ?? rules;
}
