import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/campaign/**'],
    globalSetup: ['tests/build.ts'],
    testTimeout: 60_000,
    pool: 'forks',
    // The tests share no state, so files may share a process and its loaded modules: half the time.
    isolate: false,
    maxWorkers: '100%',
  },
});
