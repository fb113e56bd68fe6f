import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/transport/discord/*.campaign.ts'],
    globalSetup: ['tests/build.ts'],
    pool: 'forks',
    fileParallelism: false,
    testTimeout: 0,
    disableConsoleIntercept: true,
  },
});
