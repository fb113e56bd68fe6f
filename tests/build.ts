/** Builds the program once before the tests, for those that run it as a process of its own. */
import { execFileSync } from 'node:child_process';

export function setup(): void {
  execFileSync(process.execPath, ['tools/build.mjs'], { stdio: 'inherit' });
}
