import type { Server } from "node:http";
export declare const fileFor: (root: string, path: string) => string | undefined;
/** What the server knows of the build behind it. */
export interface State {
  ready: boolean;
}
export declare const serve: (
  root: string,
  port?: number,
  tls?: { cert: Buffer; key: Buffer },
  state?: State,
) => Promise<{ server: Server; port: number }>;
export declare const serveDist: (args: readonly string[], state: State) => Promise<void>;
