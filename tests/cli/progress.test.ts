import { expect, test } from "vitest";
import { progress } from "../../src/cli/progress.ts";

function stream(isTTY: boolean, columns = 20) {
  const written: string[] = [];
  return { isTTY, columns, written, write: (text: string) => written.push(text) };
}

test("on a terminal one line is rewritten in place, and wiped at the end", () => {
  const terminal = stream(true);
  const bar = progress(terminal);
  bar.show("one");
  bar.show("two");
  bar.clear();
  bar.clear();
  expect(terminal.written).toEqual(["\r\u001B[2Kone", "\r\u001B[2Ktwo", "\r\u001B[2K"]);
});

test("a line never wraps, and holds no control characters", () => {
  const terminal = stream(true);
  progress(terminal).show("a\tlong\nline that goes on and on");
  const line = terminal.written[0]?.replace("\r\u001B[2K", "") ?? "";
  expect([...line]).toHaveLength(19);
  expect(line).toBe("a long line that g…");
});

test("elsewhere nothing is written", () => {
  const file = stream(false);
  const bar = progress(file);
  bar.show("one");
  bar.clear();
  expect(file.written).toEqual([]);
});
