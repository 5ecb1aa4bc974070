export declare const hostFiles: () => Readonly<
  Record<"_headers" | "staticwebapp.config.json" | "nginx.conf" | "web.config", string>
>;
