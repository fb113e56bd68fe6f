/** A folder for the databases of one test file, removed when its tests are over. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

/** Gives a new path for a database at each call. */
export function databases(): () => string {
  const folder = mkdtempSync(join(tmpdir(), 'easewright-store-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  let made = 0;
  return () => {
    made += 1;
    return join(folder, `${made}.db`);
  };
}
