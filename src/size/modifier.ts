/** A modifier and how many tokens it takes. */
export type Modifier = { readonly length: number } & (
  | { readonly kind: "lie"; readonly lie: string }
  | { readonly kind: "bundle"; readonly rows: number; readonly columns: number; readonly counted: boolean }
  | { readonly kind: "nested" }
  | { readonly kind: "turn"; readonly degrees: number }
  | { readonly kind: "mitre"; readonly degrees: number }
);
