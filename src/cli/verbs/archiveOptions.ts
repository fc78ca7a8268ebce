import type { Target } from "../target.ts";

/** What an archive is asked for. */
export interface ArchiveOptions {
  readonly contentDir: string;
  readonly outDir: string;
  readonly target: Target;
  /** The folder that bags are put in; null for the one beside the studio's. */
  readonly to: string | null;
  /** The bag's own name; null for the project's with its revision or the day. */
  readonly name: string | null;
  readonly pdf: boolean;
  readonly env: Readonly<Record<string, string | undefined>>;
}
