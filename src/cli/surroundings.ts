import type { ProgressStream } from "./progress.ts";

/** What the program is given by the process that it runs in. */
export interface Surroundings {
  readonly out: { write(text: string): unknown };
  readonly err: ProgressStream;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Resolves when the user asks a running preview to end. */
  readonly ended: Promise<void>;
}
