import { spawnSync } from "node:child_process";
import { readdirSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { BODY, job, page, pressForTests } from "./pressForTests.ts";

const press = pressForTests();
const { put, run, bytes } = press;

test("side by side pages come out as one after another, and are told in the order in which they were asked for", async () => {
  const names = ["a", "b", "c", "d", "e"];
  for (const [at, name] of names.entries()) put(`quay/${name}.html`, page(BODY.repeat(5 - at)));
  const jobs = names.map((name) => job(name));
  const alone = await run(jobs, { atOnce: 1 });
  const one = names.map((name) => bytes(name));
  const together = await run(jobs, { atOnce: 2 });
  expect(together).toEqual(alone);
  expect(together.value?.printed.map(({ pdf }) => pdf)).toEqual(jobs.map(({ pdf }) => pdf));
  for (const [at, name] of names.entries())
    expect(bytes(name).equals(one[at] as Buffer), name).toBe(true);
});

test.skipIf(process.platform === "win32")(
  "where a second browser does not start, the first prints all",
  async () => {
    const names = ["a", "b", "c"];
    for (const name of names) put(`quay/${name}.html`, page(`<p>${name}</p>`));
    // A program that starts the browser once, and never again.
    const once = join(press.root, "once.sh");
    writeFileSync(
      once,
      `#!/bin/sh\nmkdir "${join(press.root, "begun")}" 2>/dev/null || exit 1\nexec "${press.browser.program}" "$@"\n`,
      { mode: 0o755 },
    );
    const result = await run(
      names.map((name) => job(name)),
      { atOnce: 2, browser: { ...press.browser, program: once } },
    );
    expect(result.diagnostics).toEqual([]);
    expect(result.value?.printed.map(({ pdf }) => pdf)).toEqual(
      names.map((name) => `quay/${name}.pdf`),
    );
  },
);

test("a page that takes too long is reported by name, and the next is printed", async () => {
  // Noise over many sheets, which is reckoned only when they are printed, keeps the renderer busy for longer than any limit.
  const noise = `<svg width="0" height="0"><filter id="f"><feTurbulence baseFrequency="0.05" numOctaves="400"/></filter></svg>`;
  const sheet = `<div style="width:700px;height:900px;filter:url(#f);background:#888"></div>`;
  put("quay/slow.html", page(noise + sheet.repeat(300)));
  put("quay/fast.html", page("<p>x</p>"));
  const result = await run([job("slow"), job("fast")], { timeoutMs: 4_000, atOnce: 1 });
  expect(result.diagnostics.map((one) => [one.code, one.file])).toEqual([
    ["print-timeout", "quay/slow.html"],
  ]);
  expect(result.value?.printed.map((one) => one.pdf)).toEqual(["quay/fast.pdf"]);
});

test.skipIf(process.platform !== "linux")(
  "a browser that dies is replaced once, and nothing is left running",
  async () => {
    put("quay/a.html", page("<p>x</p>"));
    put("quay/b.html", page("<p>y</p>"));
    let killed = 0;
    const result = await run([job("a"), job("b")], {
      atOnce: 1,
      onProgress: (done) => {
        // Before the second page: end our own browser under the press.
        if (done === 1) {
          for (const pid of ourBrowsers()) {
            process.kill(pid, "SIGKILL");
            killed += 1;
          }
        }
      },
    });
    expect(killed).toBeGreaterThan(0);
    expect(result.diagnostics).toEqual([]);
    expect(result.value?.printed).toHaveLength(2);
    expect(ourBrowsers()).toEqual([]);
    expect(
      readdirSync(tmpdir()).filter(
        (name) => name.startsWith("roomcloth-profile-") && ours.has(name),
      ),
    ).toEqual([]);
  },
);

const ours = new Set<string>();
/** Browsers that are children of this very process. */
function ourBrowsers(): number[] {
  const list = spawnSync("ps", ["-eo", "pid=,ppid=,stat=,args="], { encoding: "utf8" }).stdout;
  return list.split("\n").flatMap((line) => {
    const [, pid, parent, state, args] = /^\s*(\d+)\s+(\d+)\s+(\S+)\s+(.*)$/.exec(line) ?? [];
    if (
      Number(parent) !== process.pid ||
      state?.startsWith("Z") ||
      !args?.includes("roomcloth-profile-")
    )
      return [];
    const profile = /roomcloth-profile-\w+/.exec(args)?.[0];
    if (profile) ours.add(profile);
    return [Number(pid)];
  });
}
