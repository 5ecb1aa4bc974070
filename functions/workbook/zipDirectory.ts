import { BookFault } from "./fault";

/** What the zip's own directory says of one part. */
export interface ZipEntry {
  readonly name: string;
  readonly check: number;
  readonly size: number;
}

const table = Uint32Array.from({ length: 256 }, (_, n) =>
  Array.from({ length: 8 }).reduce<number>((c) => (c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1), n),
);

/** CRC-32 of a part (ISO 3309), as zip keeps it: a changed bit in a number would otherwise be read as another number. */
export function crc32(bytes: Uint8Array): number {
  let c = 0xffffffff;
  for (const byte of bytes) c = table[(c ^ byte) & 0xff]! ^ (c >>> 8);
  return (c ^ 0xffffffff) >>> 0;
}

const endMark = 0x06054b50;
const entryMark = 0x02014b50;

/** The entries of a zip, read from its end; refuses what is cut short. */
export function zipDirectory(bytes: Uint8Array): readonly ZipEntry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let end = bytes.length - 22;
  while (end >= 0 && end > bytes.length - 65_557 && view.getUint32(end, true) !== endMark) end -= 1;
  if (end < 0 || view.getUint32(end, true) !== endMark) throw new BookFault("is damaged: its end is missing");
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  const entries: ZipEntry[] = [];
  for (let i = 0; i < count; i += 1) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== entryMark)
      throw new BookFault("is damaged: its list of parts is broken");
    const length = view.getUint16(at + 28, true);
    const name = new TextDecoder(view.getUint16(at + 8, true) & 0x800 ? "utf-8" : "latin1").decode(
      bytes.subarray(at + 46, at + 46 + length),
    );
    entries.push({ name, check: view.getUint32(at + 16, true), size: view.getUint32(at + 24, true) });
    at += 46 + length + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return entries;
}
