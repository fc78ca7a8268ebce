import { join } from "node:path";
import { cacheSubfolder } from "../press/cacheFolder.ts";
import { findBrowser } from "../press/findBrowser.ts";
import { main } from "./main.ts";
import type { Wiring } from "./wiring.ts";

/** The real parts behind the verbs, each loaded when it is first called. */
export const WIRING: Wiring = {
  compute: async (...asked) => (await import("../site/compute.ts")).compute(...asked),
  makePictures: async (...asked) =>
    (await import("../site/makePictures.ts")).makePictures(...asked),
  starter: async (wanted) => (await import("./starter/starter.ts")).starter(wanted),
  findBrowser: () => findBrowser(),
  layoutsDir: join(import.meta.dirname, "..", "..", "layouts"),
  pdfCache: () => cacheSubfolder("pdf"),
};

/** Runs the process's own command line and sets its exit status. */
export async function start(): Promise<void> {
  const { stdout, stderr, env, argv } = process;
  // A reader that closes the pipe early (`| head`) is no mistake of ours.
  stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code !== "EPIPE") throw error;
  });
  process.exitCode = await main(argv.slice(2), WIRING, {
    out: stdout,
    err: stderr,
    env,
    ended: new Promise(() => {}),
  });
}
