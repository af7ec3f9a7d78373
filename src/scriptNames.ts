interface ScriptPolicies {
  createPolicy(
    name: string,
    rules: { createScriptURL(url: string): string },
  ): { createScriptURL(url: string): unknown };
}

/**
 * The one way to name a script to the browser: only addresses of the own origin pass. Where the browser checks that
 * scripts are named by such a policy (Trusted Types), nothing else in the page can name one.
 * @param policy name of the policy; the content policy lists those that may be made, each once
 * @returns turns an address into one that `script.src`, `new Worker` and the registering of a worker take
 * @throws TypeError for an address of another origin
 * @see https://www.w3.org/TR/trusted-types/
 */
export function scriptNames(policy: string): (address: string) => string {
  const rules = {
    createScriptURL(address: string): string {
      const url = new URL(address, location.href);
      if (url.origin !== location.origin) throw new TypeError(`no script from ${url.origin}`);
      return url.href;
    },
  };
  const { trustedTypes } = globalThis as { trustedTypes?: ScriptPolicies };
  const made = trustedTypes?.createPolicy(policy, rules) ?? rules;
  // The page's types know no trusted addresses; to the browser they are what a string is elsewhere.
  return (address) => made.createScriptURL(address) as string;
}
