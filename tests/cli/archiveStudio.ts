import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, beforeEach } from "vitest";
import type { Wiring } from "../../src/cli/wiring.ts";
import { compute } from "../../src/site/compute.ts";
import { makePictures } from "../../src/site/makePictures.ts";
import { say } from "./smallStudio.ts";

/**
 * A studio of the tests' own with a finished project, in a temporary folder that goes after the file's tests; its bags lie beside it
 * and go before each test. The scenario is made up.
 */
export function archiveStudio() {
  const home = mkdtempSync(join(tmpdir(), "roomcloth-archive-"));
  const content = join(home, "studio");
  const bags = join(home, "studio-archive");
  const DAY = 1_795_478_400; // 2026-11-24
  const env = { SOURCE_DATE_EPOCH: String(DAY) };
  const wiring = {
    compute,
    makePictures,
    layoutsDir: join(import.meta.dirname, "../../layouts"),
    pdfCache: () => null,
  } as unknown as Wiring;

  function put(path: string, text: string | Buffer): void {
    mkdirSync(dirname(join(home, path)), { recursive: true });
    writeFileSync(join(home, path), text);
  }
  const run = (...args: string[]) =>
    say(["--content", content, "--out", join(home, "out"), ...args], wiring, env);
  const archive = (...args: string[]) => run("archive", "quay", "--no-pdf", ...args);
  const listed = (folder: string): string[] =>
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
      .sort();
  const project = (more: string): void =>
    put(
      "studio/projects/quay/project.md",
      `---\nproject: Quay\nclient: { name: Nobody, address: 1 Slip Street }\ndated: 2026-11-20\n${more}---\n`,
    );
  const FINISHED = `status: fitted
revision: B/2
approvals:
  - { revision: A, by: Ida Nobody, on: 2026-10-21, total: 80.00 }
payments:
  - { amount: 40.00, on: 2026-10-22, what: deposit }
orders:
  - { cloth: linen, length: 2 yd, on: 2026-10-23, number: 0417 }
receipts:
  - { cloth: linen, lot: 0123, length: 2 1/8 yd, width: 53 3/4", on: 2026-11-02, flaws: [{ from: 1 yd, length: 3", what: slub }] }
  - { cloth: linen, lot: 0099, length: 2 yd, on: 2026-10-30, returned: { on: 2026-10-31, because: another shade } }
`;
  const card = (name: string, more = ""): string =>
    `---\ncloth: ${name}\nwidth: 54"\nkind: plain\ncolours: [{ colour: "#8a7a66", name: oat }]\nsupplier: mill\nprice: { trade: 10, per: yard }\n${more}---\n`;

  beforeAll(async () => {
    process.env.SOURCE_DATE_EPOCH = env.SOURCE_DATE_EPOCH;
    put(
      "studio/studio.md",
      "---\nstudio: Alder Lane Rooms\nlanguage: en-US\nunits: inches\ncurrency: USD\npaper: tabloid\nmarkup: { cloth: 2 }\nmakers: { bench: { name: The Bench, makes: [cushion], rates: { cushion: 30 per item } } }\nsuppliers: { mill: { name: Low Mill } }\n---\n",
    );
    put("studio/cloths/linen.md", card("Oat linen", "reference: LM 7\ncare: Wash cool.\n"));
    put("studio/cloths/velvet.md", card("Velvet"));
    put("studio/cloths/other.md", card("Unasked"));
    put("studio/objects/stool.md", "---\nobject: Stool\nowner: client\nstays: yes\n---\n");
    put("studio/objects/lamp.md", "---\nobject: Lamp\n---\n");
    put("studio/projects/quay/notes.txt", "The client rang.\n");
    put(
      "studio/projects/quay/den.md",
      '---\nroom: Den\nmeasured: { by: Ada Wren, on: 2026-10-02 }\ncloths: [linen, velvet]\nitems:\n  - object: stool\n  - cushion: Seat\n    cloth: linen\n    size: 20" x 20"\n    count: 2\n    edge: knife\n    maker: bench\n    at: { on: stool }\n    hardware: [{ what: feather pad, supplier: mill, trade: 0, count: 2, ordered: 2026-10-23, arrived: 2026-11-02 }]\n---\n',
    );
    put(
      "studio/projects/else/project.md",
      "---\nproject: Secret Lane\nclient: { name: Other }\nstatus: enquiry\n---\n",
    );
    put("studio/projects/else/hall.md", "---\nroom: Hall\nitems: []\n---\n");
    project(FINISHED);
  });
  beforeEach(() => {
    rmSync(bags, { recursive: true, force: true });
  });
  afterAll(() => {
    delete process.env.SOURCE_DATE_EPOCH;
    rmSync(home, { recursive: true, force: true });
  });
  return { home, content, bags, env, wiring, FINISHED, put, run, archive, listed, project };
}
