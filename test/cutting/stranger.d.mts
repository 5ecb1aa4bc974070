export function rate(job: Readonly<Record<string, unknown>>): unknown;
