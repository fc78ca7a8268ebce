import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { TestProject } from "vitest/node";

declare module "vitest" {
  export interface ProvidedContext {
    /** Folder of this run, in which studios that several files of tests look at are built once. */
    readonly sharedFolder: string;
  }
}

/** Makes the folder before the first test and takes it away after the last. */
export default async function sharedFolder(project: TestProject): Promise<() => Promise<void>> {
  const folder = await mkdtemp(join(tmpdir(), "roomcloth-shared-"));
  project.provide("sharedFolder", folder);
  return () => rm(folder, { recursive: true, force: true });
}
