/** A font file without the tables that pair and join letters: a page needs none of them, and its writer is slow with them. */
import { readFileSync } from 'node:fs';
import { fontFile, type Weight } from '../draw/font.ts';

const LEFT_OUT: ReadonlySet<string> = new Set(['GDEF', 'GPOS', 'GSUB', 'kern']);

const ENTRY = 16;

/** The font as a file of the same format (OpenType specification 1.9): a directory of fewer tables over the same data. */
export function plainFont(weight: Weight): Buffer {
  const file = readFileSync(fontFile(weight));
  const count = file.readUInt16BE(4);
  const entries = Array.from({ length: count }, (_, i) =>
    file.subarray(12 + ENTRY * i, 12 + ENTRY * (i + 1)),
  );
  const kept = entries.filter((entry) => !LEFT_OUT.has(entry.toString('latin1', 0, 4)));
  const directory = Buffer.from(file.subarray(0, 12 + ENTRY * count));
  directory.writeUInt16BE(kept.length, 4);
  kept.forEach((entry, i) => {
    entry.copy(directory, 12 + ENTRY * i);
  });
  return Buffer.concat([directory, file.subarray(directory.length)]);
}
