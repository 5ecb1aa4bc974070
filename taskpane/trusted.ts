/**
 * Loaded before office.js. Our policy lets no text become code (require-trusted-types-for 'script'), and office.js puts
 * the addresses of its own parts into script elements as text. This lets exactly those through, and nothing else.
 */
interface Policies {
  readonly createPolicy: (
    name: string,
    rules: { readonly createScriptURL: (address: string) => string | null },
  ) => unknown;
}

const parts = "https://appsforoffice.microsoft.com/";
const { trustedTypes } = window as { readonly trustedTypes?: Policies };
trustedTypes?.createPolicy("default", { createScriptURL: (address) => (address.startsWith(parts) ? address : null) });

export {};
