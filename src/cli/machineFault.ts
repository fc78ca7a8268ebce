import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";

/** Codes of what the machine lacks; they make the exit status 3. */
const MACHINE_CODES: ReadonlySet<string> = new Set([
  "no-browser",
  "browser-setting",
  "browser-start",
  "browser-died",
  "print-timeout",
  "no-space",
  "cannot-write",
  "output-busy",
  "output-held",
  "output-not-ours",
]);

/** True where a diagnostic tells of the machine, not of the content. */
export function isMachineFault(one: Diagnostic): boolean {
  return MACHINE_CODES.has(one.code);
}

/**
 * The diagnostic of a file system's error that the user can mend (no space, no leave, a file in use),
 * or null for every other error, which is a mistake of ours and must not be hidden. `option` names another folder.
 */
export function machineFault(error: unknown, option = "--out"): Diagnostic | null {
  const { code, path, syscall } = error as NodeJS.ErrnoException;
  const place = { file: path ?? "", line: null, column: null, keyPath: null };
  if (code === "ENOSPC" || code === "EDQUOT") {
    return diagnostic(place, "no-space", "There is no room left on the disk.", {
      hint: `Free some space, or name another folder with ${option}, and try again. What was there before is unchanged.`,
    });
  }
  // A folder on a disk that is read only cannot be made, and Node then says that it is not there.
  const unmade = code === "ENOENT" && syscall === "mkdir";
  if (code === "EACCES" || code === "EPERM" || code === "EROFS" || unmade) {
    return diagnostic(place, "cannot-write", "This folder or file cannot be written to.", {
      hint: `Ask for leave to write there, or name another folder with ${option}.`,
    });
  }
  if (code === "EBUSY") {
    return diagnostic(place, "output-held", "Another program holds this file or folder.", {
      hint: "Close the program that shows it (often a PDF reader) and try again.",
    });
  }
  return null;
}
