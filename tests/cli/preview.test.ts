import { readdirSync, rmSync, unlinkSync, utimesSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { main } from "../../src/cli/main.ts";
import type { Wiring } from "../../src/cli/wiring.ts";
import { smallStudio } from "./smallStudio.ts";

let studio: ReturnType<typeof smallStudio>;
let end: () => void = () => {};
beforeEach(() => {
  studio = smallStudio("watched");
  studio.room("quay/den", "first");
  studio.room("quay/hall", "first");
  studio.room("mill/attic", "first");
  const at = (room: string, second: number): void =>
    utimesSync(join(studio.content, `projects/${room}.md`), second, second);
  at("quay/den", 1000);
  at("quay/hall", 3000);
  at("mill/attic", 2000);
});
afterEach(() => {
  end();
  studio.remove();
});

interface Running {
  /** Address that was printed. */
  readonly opened: string;
  readonly origin: string;
  readonly done: Promise<number>;
  err(): string;
}

async function start(
  more: Partial<Wiring> = {},
  port = "0",
  target: readonly string[] = [],
): Promise<Running> {
  let err = "";
  const ended = new Promise<void>((resolve) => {
    end = resolve;
  });
  let print: (text: string) => void = () => {};
  const printed = new Promise<string>((resolve) => {
    print = resolve;
  });
  const done = main(
    ["--content", studio.content, "--out", studio.out, "preview", "--port", port, ...target],
    { ...studio.wiring, ...more },
    { out: { write: print }, err: { write: (text) => (err += text) }, env: {}, ended },
  );
  const opened = (await Promise.race([printed, done.then(String)])).trim();
  return {
    opened,
    origin: opened.startsWith("http") ? new URL(opened).origin : "",
    done,
    err: () => err,
  };
}

async function get(address: string): Promise<{ status: number; text: string }> {
  const response = await fetch(address, { redirect: "follow" });
  return { status: response.status, text: await response.text() };
}

async function until(address: string, words: string): Promise<{ status: number; text: string }> {
  for (let i = 0; i < 200; i++) {
    const page = await get(address);
    if (page.text.includes(words)) return page;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`${address} never showed ${words}`);
}

test("opens at the room that was saved last, and writes nothing to the output folder", async () => {
  const preview = await start();
  expect(preview.opened).toBe(`${preview.origin}/client/quay/hall/index.html`);
  expect((await get(preview.opened)).text).toContain("first");
  expect((await get(`${preview.origin}/`)).text).toContain("<h1>quay/hall</h1>");
  expect((await get(`${preview.origin}/client/mill/style.css`)).text).toBe("p{}");
  expect(studio.made()).toEqual({});
  end();
  expect(await preview.done).toBe(0);
  await expect(fetch(preview.opened)).rejects.toThrow();
});

test("a broken room shows what is wrong at its own address, and comes back when it is mended", async () => {
  const preview = await start();
  const den = `${preview.origin}/client/quay/den/index.html`;
  studio.room("quay/den", "BROKEN");
  const broken = await until(den, "This is broken.");
  expect(broken.status).toBe(404);
  expect(broken.text).toContain("projects/quay/den.md:4:1");
  expect(broken.text).toContain("Mend it.");
  // Other projects go on, with a word about it.
  expect((await get(`${preview.origin}/client/mill/attic/index.html`)).text).toContain(
    "The studio has one error",
  );
  expect(preview.err()).toContain("This is broken.");
  studio.room("quay/den", "put right");
  const mended = await until(den, "put right");
  expect(mended.status).toBe(200);
  expect(mended.text).not.toContain("The studio has");
});

test("a layout with a mistake, and a program that fails, are survived too", async () => {
  let fails = false;
  const preview = await start({
    compute: async (contentDir, options) => {
      if (fails) throw new Error("a mistake of ours");
      return studio.wiring.compute(contentDir, options);
    },
  });
  studio.put("layouts/documents/board.njk", "{{ model.nothing }}");
  await until(preview.opened, "layouts/documents/board.njk");
  studio.put("layouts/documents/board.njk", "<body>{{ model.name }} again</body>");
  await until(preview.opened, "quay/hall again");
  fails = true;
  studio.room("quay/hall", "x");
  await until(preview.opened, "a mistake of ours");
  fails = false;
  studio.room("quay/hall", "y");
  await until(preview.opened, "quay/hall again");
});

test("a deleted room's page goes, a new room's comes", async () => {
  const preview = await start();
  unlinkSync(join(studio.content, "projects/quay/den.md"));
  await until(`${preview.origin}/client/quay/den/index.html`, "There is no such page");
  studio.room("quay/study", "new");
  await until(`${preview.origin}/client/quay/study/index.html`, "new");
  rmSync(join(studio.content, "projects/mill"), { recursive: true });
  await until(`${preview.origin}/client/mill/attic/index.html`, "There is no such page");
});

test("open pages are told of each change", async () => {
  const preview = await start();
  const response = await fetch(`${preview.origin}/.changes`);
  const reader = response.body?.pipeThrough(new TextDecoderStream()).getReader();
  const next = async (): Promise<string> => (await reader?.read())?.value ?? "";
  expect(await next()).toContain("data: 1");
  studio.room("quay/den", "second");
  expect(await next()).toContain("data: 2");
  expect((await get(preview.opened)).text).toContain('new EventSource("/.changes")');
  end();
  expect(await preview.done).toBe(0);
});

test("is for this machine only: other hosts' names, other methods and ways out are refused", async () => {
  const preview = await start();
  const { port } = new URL(preview.origin);
  const ask = (path: string, method: string, host: string): Promise<number | undefined> =>
    new Promise((resolve, reject) => {
      request({ host: "127.0.0.1", port, path, method, headers: { host } }, (answer) => {
        answer.resume();
        resolve(answer.statusCode);
      })
        .on("error", reject)
        .end();
    });
  const page = "/client/quay/den/index.html";
  expect(await ask(page, "GET", `localhost:${port}`)).toBe(200);
  expect(await ask(page, "GET", `studio.example:${port}`)).toBe(403);
  expect(await ask(page, "POST", `127.0.0.1:${port}`)).toBe(405);
  studio.put("secret.txt", "secret");
  for (const path of [
    "/../../../secret.txt",
    "/%2e%2e/%2e%2e/secret.txt",
    "/..%5c..%5csecret.txt",
    "//etc/passwd",
    "/%00",
  ]) {
    expect(await ask(path, "GET", `127.0.0.1:${port}`)).toBe(404);
  }
});

test("a port that is taken is said, with status 3; nothing is left in the temporary folder", async () => {
  const before = readdirSync(tmpdir());
  const first = await start();
  const endFirst = end;
  const second = await start({}, new URL(first.origin).port);
  expect(second.opened).toBe("3");
  expect(second.err()).toContain("--port");
  endFirst();
  await first.done;
  const left = readdirSync(tmpdir()).filter((name) => name.startsWith("roomcloth-preview-"));
  expect(left.filter((name) => !before.includes(name))).toEqual([]);
});

test("one project is opened at its own room, or at the one that is named", async () => {
  const asked: (string | null)[] = [];
  const more: Partial<Wiring> = {
    compute: (dir, options) => {
      asked.push(options.only);
      return studio.wiring.compute(dir, options);
    },
  };
  const mill = await start(more, "0", ["mill"]);
  expect(mill.opened).toBe(`${mill.origin}/client/mill/attic/index.html`);
  expect(asked).toEqual(["mill"]);
  end();
  expect(await mill.done).toBe(0);
  const den = await start(more, "0", ["quay/den"]);
  expect(den.opened).toBe(`${den.origin}/client/quay/den/index.html`);
  expect(asked).toEqual(["mill", "quay"]);
});

test("a project that is not there is a mistake of the command line, and what there is is named", async () => {
  const preview = await start({}, "0", ["mil"]);
  expect(await preview.done).toBe(2);
  expect(preview.err()).toContain('There is no project "mil". Projects: mill, quay.');
});
