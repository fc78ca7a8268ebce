import type { ScheduleRow } from "../../src/documents/studio/scheduleRows.ts";
import { computedFolder } from "./smallFolder.ts";

// The schedule from files. Days counted by hand on a printed calendar of 2026 and 2027; the scenario is made up, the steps are common
// practice, no source.

interface Told {
  readonly studio?: string;
  readonly bench?: string;
  readonly frame?: string;
  readonly mill?: string;
  readonly card?: string;
  readonly project?: string;
  readonly status?: string;
  readonly item?: string;
  readonly maker?: string;
}

export const FITTING = "fitting: 2027-03-08";
const LEADS = { bench: "lead: 4 weeks", frame: "lead: 5 weeks", mill: "lead: 3 weeks" };

export function files(told: Told): Record<string, string> {
  const t = { ...LEADS, ...told };
  const more = (line: string | undefined) => (line ? `, ${line}` : "");
  return {
    "studio.md": `studio: Alder Lane Rooms
language: en-GB
units: centimetres
currency: GBP
paper: a3
${t.studio ?? ""}
makers:
  bench: { name: Bench, makes: [curtains]${more(t.bench)} }
  frame: { name: Frame, makes: [cushion]${more(t.frame)} }
suppliers:
  mill: { name: The mill${more(t.mill)} }`,
    "cloths/linen.md": `cloth: Linen\nwidth: 140 cm\nkind: plain\ncolours: [{ colour: "#8a7a66" }]\nsupplier: mill\n${t.card ?? ""}`,
    "projects/quay/project.md": `project: Quay\nclient: { name: Nobody }\nstatus: ${t.status ?? "proposed"}\nrevision: B\ndated: 2026-11-23\n${t.project ?? FITTING}`,
    "projects/quay/den.md": `room: Den
items:
  - curtains: Bay
    cloth: linen
    pole: 240 cm
    drop: 220 cm
    heading: pencil-pleat
${t.maker ?? "    maker: bench"}
${t.item ?? ""}`,
  };
}

export async function schedule(told: Told = {}) {
  const computed = await computedFolder(files(told));
  const errors = computed.diagnostics.filter((d) => d.severity === "error");
  const page = computed.pages.find((p) => (p.model as { kind: string }).kind === "schedule");
  const model = page?.model as unknown as {
    lead: string;
    parts: { name: string; rows: ScheduleRow[] }[];
    missing: { of: string; where: string; line: string; stops: string }[];
    note: string;
    fitted: string;
    closed: string[];
    unwritten: string;
    openEnded: string;
  };
  const rows = (name: string) => model?.parts.find((p) => p.name === name)?.rows ?? [];
  return {
    errors,
    page,
    model,
    rows,
    said: (name: string) => rows(name).map((r) => `${r.day}: ${r.what}`),
    all: computed.diagnostics,
    warned: computed.diagnostics.filter((d) => d.code === "schedule-late"),
  };
}

export const CUSHION = `  - cushion: Seat
    cloth: linen
    size: 50 cm x 50 cm
    edge: knife
    maker: frame`;
