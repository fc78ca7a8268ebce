import { deflateSync } from "node:zlib";
import { expect, test } from "vitest";
import { inflatedStreams } from "./saidOf.ts";

test("the search unpacks a deflated stream, with either line end", () => {
  for (const end of ["\n", "\r\n"]) {
    const file = Buffer.concat([
      Buffer.from(`%PDF-1.7\n1 0 obj\n<</Filter/FlateDecode>>\nstream${end}`),
      deflateSync("(Zwtinside) Tj"),
      Buffer.from("\nendstream\nendobj\n"),
    ]);
    expect(file.toString("latin1")).not.toContain("Zwtinside");
    expect(inflatedStreams(file).join("")).toContain("Zwtinside");
  }
});
