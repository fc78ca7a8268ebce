import type { Finding } from "../../scheme/finding.ts";
import { foldWorks } from "../../scheme/foldWorks.ts";
import { capital } from "../../units/capital.ts";
import { wordsIn } from "../../units/spelling.ts";
import type { ProjectData } from "../projectData.ts";
import { marked } from "../words/marks.ts";
import { evidenceWords } from "./evidenceWords.ts";

const LEVEL_WORDS = {
  "worth-a-look": "Worth a look",
  problem: "Problems",
} as const;

/** A finding with its numbers and the line that overrules it. */
export function row(f: Finding, data: ProjectData) {
  const { units, language } = data.studio.fields;
  return {
    message: marked(f.message),
    numbers: marked(evidenceWords(f, units, language)),
    reason: f.reason,
    accepted: f.accepted ?? "",
    paste: f.accepted === null ? (f.pasteLine?.trim() ?? "") : "",
  };
}

/** Open findings of one level: those of one code and one reason together, the reason said once. */
function groups(findings: readonly Finding[], data: ProjectData) {
  const keys = [...new Set(findings.map((f) => `${f.code} ${f.reason}`))];
  return keys.map((key) => {
    const own = findings.filter((f) => `${f.code} ${f.reason}` === key);
    return { reason: own[0]?.reason ?? "", rows: own.map((f) => row(f, data)) };
  });
}

/** The rooms that have open findings of a level, each with its own. */
export function openOf(level: "problem" | "worth-a-look", data: ProjectData) {
  return {
    words: LEVEL_WORDS[level],
    rooms: data.rooms
      .map((room) => ({
        name: capital(room.record.fields.room),
        groups: groups(
          room.scheme.findings.filter((f) => f.level === level && f.accepted === null),
          data,
        ),
      }))
      .filter((room) => room.groups.length > 0),
  };
}

/** What works, folded: a sentence, its reason, no numbers beside it. */
export function works(findings: readonly Finding[], language: string) {
  const folded = foldWorks(
    findings.filter((f) => f.level === "works"),
    wordsIn(language),
  );
  return folded.map((f) => ({ message: marked(f.message), reason: f.reason }));
}

/** How many problems and things worth a look are open, in words. */
export function countWords(findings: readonly Finding[]): string {
  const open = (level: Finding["level"]): number =>
    findings.filter((f) => f.level === level && f.accepted === null).length;
  const [problems, looks] = [open("problem"), open("worth-a-look")];
  const said = [
    problems > 0 ? `${problems} ${problems === 1 ? "problem" : "problems"}` : "no problem",
    looks > 0 ? `${looks} worth a look` : "nothing worth a look",
  ];
  return `${capital(said.join(", "))}.`;
}
