import { expect, test } from "vitest";
import type { ProjectData } from "../../src/documents/projectData.ts";
import { checkLetters } from "../../src/documents/words/checkLetters.ts";

const place = (keyPath: readonly (string | number)[]) => ({
  file: "project.md",
  line: 1,
  column: 1,
  keyPath: keyPath.join("."),
});

/** Only what the check looks at. */
function project(client: string, room = "Den"): ProjectData {
  return {
    project: { fields: { project: "Quay", client: { name: client } }, place },
    studio: { fields: { studio: "Rooms" }, place },
    records: { cloths: new Map() },
    rooms: [
      { record: { fields: { room }, body: "Quiet.", place }, items: [], scheme: { roles: [] } },
    ],
  } as unknown as ProjectData;
}

test("names in Latin, Greek, Cyrillic, Hebrew and Arabic letters, with marks and figures, are in order", () => {
  for (const name of [
    "Nguyễn Thị Hồng",
    "Šimečková & Łódź, 3½ × 2″",
    "Ἀθηνᾶ Παπαδοπούλου",
    "Щербакова",
    "בית הים",
    "دار البحر",
  ])
    expect(checkLetters(project(name)), name).toEqual([]);
});

test("a name in other letters is told once, where it stands", () => {
  const found = checkLetters(project("中村", "中村 room"));
  expect(found).toHaveLength(1);
  expect(found[0]).toMatchObject({
    code: "letters-without-face",
    severity: "warning",
    actual: "中村",
    keyPath: "client.name",
  });
});

test("who approved and what was paid for stand on the account, and are told too", () => {
  const data = project("Nobody");
  Object.assign(data.project.fields, {
    approvals: [{ by: "Nobody" }, { by: "中村" }],
    payments: [{}, { what: "木綿" }],
  });
  expect(checkLetters(data).map((d) => d.keyPath)).toEqual(["approvals.1.by", "payments.1.what"]);
});
