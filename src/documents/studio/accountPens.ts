import type { Account } from "../../money/account/account.ts";
import { moreOrLess } from "../../money/account/checkAccount.ts";
import { printMoney } from "../../units/money.ts";
import type { ProjectData } from "../projectData.ts";
import { bareMoney } from "../words/bareMoney.ts";
import { dateInWords } from "../words/dates.ts";
import { starred } from "../words/stars.ts";

/** How an account's sums and days are written. */
export function pens({ account, studio }: ProjectData) {
  const { language } = studio.fields;
  return {
    bare: (sum: Account["total"]): string => bareMoney(sum, language),
    print: (sum: Account["total"]): string => printMoney(sum, language),
    day: (iso: string): string => dateInWords(iso, language),
    /** A star where a sum is a share of a total that is not the whole yet; what the star means is `openNote`. */
    star: (sum: string, isShare = true): string =>
      starred(sum, isShare && account.pricesIn === "some"),
    change: account.change ? moreOrLess(account.change, language) : "",
  };
}
