import { type Diagnostic, hasErrors } from "../diagnostics/diagnostic.ts";
import { isMachineFault } from "./machineFault.ts";

/** 0 done; 1 the content has errors; 2 the command line is wrong; 3 the machine lacks something. */
export type ExitCode = 0 | 1 | 2 | 3;

/** What a verb has to say; `main` decides how it is shown. */
export interface Outcome {
  readonly exit: ExitCode;
  /** For `--json`: plain values. */
  readonly json: unknown;
  /** For people, on standard output; empty for nothing. */
  readonly text: string;
  /** On standard error. */
  readonly diagnostics: readonly Diagnostic[];
}

/** The exit status that diagnostics ask for. What the machine lacks comes first: mending files would not help. */
export function exitOf(diagnostics: readonly Diagnostic[]): ExitCode {
  if (diagnostics.some((one) => one.severity === "error" && isMachineFault(one))) return 3;
  return hasErrors(diagnostics) ? 1 : 0;
}

/** A command line that cannot be followed; `main` shows it and ends with status 2. */
export class UsageError extends Error {}
