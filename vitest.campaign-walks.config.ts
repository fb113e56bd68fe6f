import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/campaign/*.campaign.ts'],
    pool: 'forks',
    fileParallelism: false,
    testTimeout: 0,
    disableConsoleIntercept: true,
  },
});
