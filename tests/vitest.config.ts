import { defineConfig } from "vitest/config";

const HANGS_MS = process.env.SOAK ? 3_600_000 : 600_000;

// Two workers: the tests are made for a machine of two cores. Each keeps what it has loaded for the next file, since loading took a
// fifth of the time: a test leaves no state of a module behind. One limit for all ends what hangs; it is no measure of speed, so it is
// longer than anything takes on a slow and busy machine.
export default defineConfig({
  test: {
    root: `${import.meta.dirname}/..`,
    include: ["tests/**/*.test.ts"],
    globalSetup: ["tests/output/sharedFolder.ts"],
    maxWorkers: 2,
    isolate: false,
    testTimeout: HANGS_MS,
    hookTimeout: HANGS_MS,
  },
});
