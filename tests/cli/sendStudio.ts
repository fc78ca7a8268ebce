import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach } from "vitest";
import { main } from "../../src/cli/main.ts";
import type { Wiring } from "../../src/cli/wiring.ts";
import type { ChangesBlock } from "../../src/documents/proposal/changesBlock.ts";
import { findBrowser } from "../../src/press/findBrowser.ts";
import { compute } from "../../src/site/compute.ts";
import { makePictures } from "../../src/site/makePictures.ts";

/** A studio on disk, new for each test, whose project is sent: from the file that she writes to what the next proposal says. The scenario is made up. */
export function sendStudio() {
  let dir = "";
  const put = async (path: string, text: string): Promise<void> => {
    await mkdir(dirname(join(dir, path)), { recursive: true });
    await writeFile(join(dir, path), text);
  };
  const project = (revision: string): Promise<void> =>
    put(
      "projects/quay/project.md",
      `---\nproject: Quay\nclient: { name: Nobody }\nstatus: proposed\n${revision}\ndated: 2026-11-20\nfees: { design: 200 }\n---\n`,
    );
  const room = (items: string): Promise<void> =>
    put("projects/quay/den.md", `---\nroom: Den\nitems:\n${items}---\n`);
  const cushion = (title: string, cloth: string): string =>
    `  - cushion: ${title}\n    cloth: ${cloth}\n    size: 20" x 20"\n    edge: knife\n    maker: bench\n`;
  const card = (name: string, trade: number): string =>
    `---\ncloth: ${name}\nwidth: 54"\nkind: plain\ncolours: [{ colour: "#8a7a66" }]\nprice: { trade: ${trade}, per: yard }\n---\n`;

  /** What the verb needs: all but a starter; the press where a test prints. */
  const wiring = {
    compute,
    makePictures,
    findBrowser: () => findBrowser(),
    layoutsDir: join(import.meta.dirname, "../../layouts"),
    pdfCache: () => null,
  } as unknown as Wiring;
  const send = (...args: string[]) => run("send", "quay", "--no-pdf", ...args);

  async function run(...args: string[]): Promise<{ exit: number; out: string; err: string }> {
    let [out, err] = ["", ""];
    const exit = await main(["--content", dir, "--out", join(dir, "out"), ...args], wiring, {
      out: { write: (text: string) => (out += text) },
      err: { write: (text: string) => (err += text) },
      env: {},
      ended: new Promise<void>(() => {}),
    });
    return { exit, out, err };
  }
  async function changes(): Promise<ChangesBlock | null> {
    const { pages } = await compute(dir, { only: null, useCache: false });
    const proposal = pages.find((page) => page.path === "client/quay/proposal.html");
    if (!proposal) throw new Error("no proposal");
    return (proposal.model as unknown as { changes: ChangesBlock | null }).changes;
  }

  beforeEach(async () => {
    dir = await mkdtemp(join(tmpdir(), "roomcloth-send-"));
    await put(
      "studio.md",
      "---\nstudio: Alder Lane Rooms\nlanguage: en-US\nunits: inches\ncurrency: USD\npaper: tabloid\nmarkup: { cloth: 2 }\nmakers: { bench: { name: Bench, makes: [cushion], rates: { cushion: 30 per item } } }\n---\n",
    );
    await put("cloths/linen.md", card("Linen", 10));
    await put("cloths/velvet.md", card("Velvet", 40));
    await project("revision: A");
    await room(cushion("Seat", "linen") + cushion("Back", "linen"));
  });
  afterEach(async () => {
    await rm(dir, { recursive: true, force: true });
  });
  return { home: () => dir, put, project, room, cushion, card, wiring, send, run, changes };
}
