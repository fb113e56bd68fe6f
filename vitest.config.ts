import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/campaign/**'],
    globalSetup: ['tests/build.ts'],
    testTimeout: 60_000,
    pool: 'forks',
  },
});
