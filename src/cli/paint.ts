import pc from "picocolors";
import type { Paint } from "../diagnostics/report.ts";

/** Colours of a report on a terminal. */
export function terminalPaint(): Paint {
  const { bold, dim, red, yellow } = pc.createColors(true);
  return {
    error: (text) => bold(red(text)),
    warning: (text) => bold(yellow(text)),
    faint: dim,
  };
}

/** The same where colours are wanted: a terminal whose user did not set NO_COLOR. */
export function paintFor(
  stream: { readonly isTTY?: boolean },
  env: Readonly<Record<string, string | undefined>>,
): Paint | undefined {
  return stream.isTTY === true && !env.NO_COLOR ? terminalPaint() : undefined;
}
