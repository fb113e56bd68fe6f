import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/campaign/**/*.test.ts'],
    pool: 'forks',
    testTimeout: 0,
    disableConsoleIntercept: true,
  },
});
