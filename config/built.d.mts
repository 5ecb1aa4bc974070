type Built = "dist" | "programs";
export function markBuilt(what: Built): void;
export function isBuilt(what: Built): boolean;
export function wantBuilt(what: Built): void;
