import { defineConfig } from "vitest/config";

// Two workers: the tests are made for a machine of two cores. Each keeps what it has loaded for the next file, since loading took a
// fifth of the time: a test leaves no state of a module behind. Some start a browser or build the demo, hence the long limit.
export default defineConfig({
  test: {
    root: `${import.meta.dirname}/..`,
    include: ["tests/**/*.test.ts"],
    globalSetup: ["tests/output/sharedFolder.ts"],
    maxWorkers: 2,
    isolate: false,
    testTimeout: process.env.SOAK ? 3_600_000 : 60_000,
    hookTimeout: process.env.SOAK ? 3_600_000 : 180_000,
  },
});
