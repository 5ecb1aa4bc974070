export declare const developmentOrigin: string;
export declare const rebase: (text: string, origin: string | undefined) => string;
