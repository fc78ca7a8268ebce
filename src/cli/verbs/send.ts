import { rm } from "node:fs/promises";
import { join } from "node:path";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { diagnosticJson } from "../../diagnostics/report.ts";
import { writeAtomically } from "../../images/writeAtomically.ts";
import { pricesIn } from "../../money/pricesIn.ts";
import { nextRevision } from "../../revisions/nextRevision.ts";
import { isSame, type SentRevision, writeSent } from "../../revisions/sentRevision.ts";
import type { Sending } from "../../site/computed.ts";
import { sentPath } from "../../site/readSent.ts";
import { small } from "../../units/capital.ts";
import { money, printMoney } from "../../units/money.ts";
import { isThere } from "../isThere.ts";
import { machineFault } from "../machineFault.ts";
import { exitOf, type Outcome, UsageError } from "../outcome.ts";
import type { Progress } from "../progress.ts";
import { concerns, requireTarget } from "../target.ts";
import type { Wiring } from "../wiring.ts";
import { printProposal } from "./printProposal.ts";
import type { SendOptions } from "./sendOptions.ts";

/** A revision that may be a file's name. */
const NAME = /^[\p{L}\p{N}][\p{L}\p{N} ._-]*$/u;

/**
 * Records what a client's proposal says now as sent, in the project's folder, with the proposal as it is printed, so that the next one
 * can say what has changed and any question be answered with what the client had in hand. A record is never written over: what was
 * sent stays what was sent.
 */
export async function send(
  options: SendOptions,
  wiring: Wiring,
  progress: Progress,
): Promise<Outcome> {
  const { contentDir, target } = options;
  if (target.room !== null) throw new UsageError("A proposal is a whole project's: name no room.");
  const computed = await wiring.compute(contentDir, { only: target.project, useCache: true });
  if (!computed.studioBroken) requireTarget(target, computed);
  const diagnostics = computed.diagnostics.filter((one) => concerns(one, target, computed));
  const sending = computed.sending(target.project);
  if (sending === null) {
    return { exit: exitOf(diagnostics) || 1, json: null, text: "", diagnostics };
  }
  const { state } = sending;
  const known = sending.sent.find((each) => each.revision === state.revision);
  if (known && isSame(known, state)) {
    const text = `Revision ${known.revision} is recorded already, as sent on ${known.sent}. Nothing has changed since.`;
    return outcome(known, false, text, diagnostics);
  }
  const fault = faultOf(sending, known) ?? (await takenFault(sending, options));
  if (fault) return outcome(null, false, "", [...diagnostics, fault]);
  try {
    const printed = options.pdf ? await printProposal(options, computed, wiring, progress) : null;
    if (printed && printed.value === null)
      return outcome(null, false, "", [...diagnostics, ...printed.diagnostics]);
    await keep(options, state, printed?.value ?? null);
  } catch (error) {
    const machine = machineFault(error);
    if (machine === null) throw error;
    return outcome(null, false, "", [...diagnostics, machine]);
  }
  const path = sentPath(target.project, state.revision);
  const where = options.pdf
    ? `The proposal to send is ${join(contentDir, sentPath(target.project, state.revision, "pdf"))}; it is kept as the client has it.`
    : "The proposal's PDF is not kept with it.";
  const text = `Recorded revision ${state.revision} as sent on ${state.sent}: ${sumOf(state, sending.language)}. It is kept as ${path}.\n${where}`;
  return outcome(state, true, text, diagnostics);
}

/** Writes the PDF, then the record, which says that the revision is sent: never the record alone where both were asked for. */
async function keep(
  { contentDir, target }: SendOptions,
  state: SentRevision,
  pdf: Uint8Array | null,
): Promise<void> {
  const at = (ending: "json" | "pdf") =>
    join(contentDir, sentPath(target.project, state.revision, ending));
  if (pdf) await writeAtomically(at("pdf"), pdf);
  try {
    await writeAtomically(at("json"), writeSent(state));
  } catch (error) {
    if (pdf) await rm(at("pdf"), { force: true });
    throw error;
  }
}

/** The total in words; while a price is still to come it is not the whole, and while none is in there is none to tell. */
function sumOf({ totalMinor, currency, items, others }: SentRevision, language: string): string {
  const total = money(totalMinor, currency);
  const known = pricesIn([...items, ...others], [total]);
  if (known === "none") return "no price is in it yet";
  const sum = printMoney(total, language);
  return known === "some" ? `${sum} so far, prices still to come` : sum;
}

/** What was sent and what it comes to now, as it stands in a sentence. */
function sentAndNow(known: SentRevision, state: SentRevision, language: string): string {
  const [then, now] = [known, state].map((each) => sumOf(each, language)) as [string, string];
  const at = then.startsWith("no ") ? "without a price" : `at ${then}`;
  return `${at}, and has been changed since: ${now.startsWith("no ") ? now : `it now comes to ${now}`}`;
}

/** Why a state cannot be recorded; null where it can. */
function faultOf(
  { state, place, language }: Sending,
  known: SentRevision | undefined,
): Diagnostic | null {
  const { revision } = state;
  if (revision === "")
    return diagnostic(
      place,
      "revision-missing",
      "What is sent needs a name, and the project has no revision.",
      {
        hint: "Write for example revision: A, build, and send that.",
      },
    );
  if (!NAME.test(revision))
    return diagnostic(place, "revision-unnameable", `A file cannot be called “${revision}”.`, {
      actual: revision,
      hint: "Write a letter or a number: revision: B.",
    });
  if (!known) return null;
  return diagnostic(
    place,
    "revision-sent",
    `Revision ${revision} was sent on ${known.sent}, ${sentAndNow(known, state, language)}.`,
    { actual: revision, hint: nextHint(revision) },
  );
}

/** What stands where the record or its PDF would be written; null where nothing does. */
async function takenFault(
  { state: { revision }, place }: Sending,
  { contentDir, target, pdf }: SendOptions,
): Promise<Diagnostic | null> {
  for (const ending of pdf ? (["json", "pdf"] as const) : (["json"] as const)) {
    const path = sentPath(target.project, revision, ending);
    if (!(await isThere(join(contentDir, path)))) continue;
    const what = ending === "json" ? "and cannot be read as what was sent" : "without its record";
    return diagnostic(place, "revision-sent", `${path} is there already, ${what}.`, {
      actual: revision,
      hint: `${ending === "json" ? "Put it back as it was, or move it away" : "Move it away, or give it another name"}. Or ${small(nextHint(revision))}`,
    });
  }
  return null;
}

function nextHint(revision: string): string {
  const next = nextRevision(revision);
  return `Write ${next ? `revision: ${next}` : "the next revision"}, build, and send that.`;
}

function outcome(
  record: SentRevision | null,
  recorded: boolean,
  text: string,
  diagnostics: readonly Diagnostic[],
): Outcome {
  return {
    exit: exitOf(diagnostics),
    json: { recorded, record, diagnostics: diagnostics.map(diagnosticJson) },
    text,
    diagnostics,
  };
}
