import { rmSync } from "node:fs";
import { rename, rm, rmdir } from "node:fs/promises";
import { join } from "node:path";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { diagnosticJson } from "../../diagnostics/report.ts";
import { onSignal } from "../../press/onSignal.ts";
import type { Archiving } from "../../site/computed.ts";
import { folderOf, nameOf, requireFolder, requireFree } from "../bag/bagPlace.ts";
import { checkBag } from "../bag/checkBag.ts";
import { fillBag } from "../bag/fillBag.ts";
import { clearLeftovers, workingName } from "../bag/workingFolder.ts";
import { machineFault } from "../machineFault.ts";
import { exitOf, type Outcome, UsageError } from "../outcome.ts";
import type { Progress } from "../progress.ts";
import { concerns, requireTarget } from "../target.ts";
import type { Wiring } from "../wiring.ts";
import type { ArchiveOptions } from "./archiveOptions.ts";
import { megabytes } from "./verify.ts";

/** How far a project is when it is finished. */
const FINISHED = new Set(["fitted", "archived"]);

/**
 * Freezes a project as a bag (RFC 8493): the files that it was made from, the documents made anew from exactly these, and its record.
 * It is made beside its place and put there whole; what is there is never written over.
 */
export async function archive(
  options: ArchiveOptions,
  wiring: Wiring,
  progress: Progress,
): Promise<Outcome> {
  const { contentDir, target } = options;
  if (target.room !== null) throw new UsageError("A project is archived whole: name no room.");
  const into = folderOf(options);
  const computed = await wiring.compute(contentDir, {
    only: target.project,
    useCache: true,
    onProgress: (line) => progress.show(line),
  });
  if (!computed.studioBroken) requireTarget(target, computed);
  const diagnostics = computed.diagnostics.filter((one) => concerns(one, target, computed));
  const found = computed.archiving(target.project);
  if (found === null) return outcome(null, "", diagnostics, 1);
  diagnostics.push(...unfinished(found));
  const bag = join(into, options.name ?? nameOf(found));
  await requireFolder(into, options.to);
  await requireFree(bag);
  await clearLeftovers(into);
  const working = join(into, workingName());
  const forget = onSignal(() => rmSync(working, { recursive: true, force: true, maxRetries: 3 }));
  try {
    const faults = await fillBag(working, found, options, wiring, progress);
    if (faults.length > 0) return outcome(null, "", [...diagnostics, ...faults], 1);
    progress.show("Comparing what was written");
    const { problems, compared, bytes } = await checkBag(working, () => {});
    if (problems.length > 0) return outcome(null, "", [...diagnostics, unsound(bag)], 3);
    await requireFree(bag);
    await rename(working, bag);
    return outcome(bag, doneWords(bag, compared, bytes, options.pdf), diagnostics, 0);
  } catch (error) {
    const fault = machineFault(error, "--to");
    if (fault === null) throw error;
    return outcome(null, "", [...diagnostics, { ...fault, file: into }], 3);
  } finally {
    forget();
    await rm(working, { recursive: true, force: true, maxRetries: 3 });
    // A folder that was made for nothing goes again; one that holds anything stays.
    await rmdir(into).catch(() => {});
  }
}

function unfinished({ status, statusPlace }: Archiving): Diagnostic[] {
  if (FINISHED.has(status)) return [];
  return [
    diagnostic(
      statusPlace,
      "archived-unfinished",
      `This project is archived while it is “${status}”.`,
      {
        severity: "warning",
        actual: status,
        expected: "fitted",
        hint: "When it is finished write status: fitted, with all that was ordered, received and paid, and archive it again.",
      },
    ),
  ];
}

function unsound(bag: string): Diagnostic {
  const place = { file: bag, line: null, column: null, keyPath: null };
  return diagnostic(place, "cannot-write", "What was written could not be read back as it was.", {
    hint: "The disk may be failing, or another program changes files there. Name another folder with --to.",
  });
}

function doneWords(bag: string, files: number, bytes: number, pdf: boolean): string {
  return [
    `Archived in ${bag}: ${files} files, ${megabytes(bytes)}${pdf ? "" : ", without PDFs"}.`,
    "Begin with data/record.txt in it. It is for the studio alone: trade prices and addresses stand in it.",
    `Keep a second copy on another disk, and look after both from time to time: verify ${bag}`,
  ].join("\n");
}

function outcome(
  bag: string | null,
  text: string,
  diagnostics: readonly Diagnostic[],
  otherwise: 0 | 1 | 3,
): Outcome {
  const exit = bag === null ? exitOf(diagnostics) || otherwise : 0;
  return { exit, json: { bag, diagnostics: diagnostics.map(diagnosticJson) }, text, diagnostics };
}
