import type { Target } from "../target.ts";

/** What a build is asked for. */
export interface BuildOptions {
  readonly contentDir: string;
  readonly outDir: string;
  readonly only: Target | null;
  readonly pdf: boolean;
  /** What came of it where there is no browser to print with, and how to go on without; a build on its own says it for itself. */
  readonly withoutBrowser?: string;
  readonly useCache: boolean;
  readonly env: Readonly<Record<string, string | undefined>>;
}
