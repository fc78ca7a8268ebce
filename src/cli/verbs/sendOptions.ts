import type { Target } from "../target.ts";

/** What is recorded as sent, and how. */
export interface SendOptions {
  readonly contentDir: string;
  readonly target: Target;
  /** Whether the printed proposal is kept beside its record. */
  readonly pdf: boolean;
  readonly env: Readonly<Record<string, string | undefined>>;
}
