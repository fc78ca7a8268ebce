import type { Target } from "../target.ts";

/** What a build is asked for. */
export interface BuildOptions {
  readonly contentDir: string;
  readonly outDir: string;
  readonly only: Target | null;
  readonly pdf: boolean;
  readonly useCache: boolean;
  readonly env: Readonly<Record<string, string | undefined>>;
}
