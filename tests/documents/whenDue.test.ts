import { expect, test } from "vitest";
import { whenDue } from "../../src/documents/proposal/whenDue.ts";

// Days as the documents' language writes them (CLDR, long form); a day of ISO 8601 is for files.
test("the client reads when a part is due in words, a day too", () => {
  expect(whenDue("approval", "en-GB")).toBe("when you sign");
  expect(whenDue("Fitting", "en-GB")).toBe("when everything is fitted");
  expect(whenDue("2027-01-02", "en-GB")).toBe("on 2 January 2027");
  expect(whenDue("2027-01-02", "en-US")).toBe("on January 2, 2027");
});
