export declare const hostProblems: (origin: string) => Promise<readonly string[]>;
