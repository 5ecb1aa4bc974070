import type { Server } from "node:http";
export declare const fileFor: (root: string, path: string) => string | undefined;
export declare const serve: (
  root: string,
  port?: number,
  tls?: { cert: Buffer; key: Buffer },
) => Promise<{ server: Server; port: number }>;
