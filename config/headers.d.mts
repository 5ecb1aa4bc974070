export declare const frames: readonly (readonly [frame: string, reason: string])[];
export declare const panePolicy: string;
export declare const gridPolicy: string;
export declare const always: Readonly<Record<string, string>>;
export declare const shared: Readonly<Record<string, string>>;
export declare const headers: (path: string) => Readonly<Record<string, string>>;
