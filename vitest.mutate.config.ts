/** The tests that Stryker runs against mutants of the engine: EASEWRIGHT_TESTS names them, else all of the engine's own. */
import { defineConfig } from 'vitest/config';

const ALL = 'tests/fit/**/*.test.ts,tests/truth/**/*.test.ts';

export default defineConfig({
  test: {
    include: (process.env.EASEWRIGHT_TESTS ?? ALL).split(','),
    testTimeout: 60_000,
  },
});
