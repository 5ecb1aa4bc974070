import { addInVersion, dataVersion } from "../data/version";

/**
 * Version of the add-in and of its data tables: "1.0.0, data 3f2a91c4".
 * @returns both versions [text]
 * @source definition; the second is a digest of the data tables
 */
export function version(): string {
  return `${addInVersion}, data ${dataVersion}`;
}
