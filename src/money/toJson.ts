import type { Money } from "../units/money.ts";
import type { Account } from "./account/account.ts";
import { accountJson } from "./account/accountJson.ts";
import type { Alternative } from "./alternatives.ts";
import type { ProjectMoney, Totals } from "./projectMoney.ts";

const minor = (sum: Money | null): number | null => (sum ? Number(sum.minor) : null);

function totals(t: Totals) {
  return {
    trade: minor(t.trade),
    client: minor(t.client),
    tax: minor(t.tax),
    total: minor(t.total),
    unchosen: minor(t.unchosen),
    budget: minor(t.budget),
    remaining: minor(t.remaining),
  };
}

/**
 * The machine form of a project's price: sums in minor units of `currency`. With a room, that room's lines and totals; instalments and
 * account are the project's.
 */
export function moneyJson(
  all: ProjectMoney,
  room: string | null = null,
  alternatives: readonly Alternative[] = [],
  account: Account | null = null,
) {
  const lines = room === null ? all.lines : all.lines.filter((l) => l.room === room);
  const shown = room === null ? all.totals : all.rooms.find((r) => r.room === room)?.totals;
  return {
    project: all.project,
    room,
    currency: all.currency,
    taxIncluded: all.taxIncluded,
    lines: lines.map((l) => ({
      room: l.room,
      item: l.item,
      what: l.what,
      label: l.label,
      cloth: l.cloth,
      maker: l.maker,
      phase: l.phase,
      trade: minor(l.trade),
      client: minor(l.client),
      tax: minor(l.tax),
      open: l.open,
      unchosen: l.unchosen,
    })),
    totals: totals(shown ?? all.totals),
    rooms: all.rooms.map((r) => ({ room: r.room, ...totals(r.totals) })),
    instalments: all.instalments.map((i) => ({
      name: i.name,
      due: i.due,
      amount: minor(i.amount),
    })),
    account: account ? accountJson(account) : null,
    phases: all.phases.map((p) => ({
      phase: p.phase,
      total: minor(p.total),
      commitment: p.commitment,
    })),
    bolts: all.bolts.map((b) => ({
      cloth: b.cloth,
      needMm: b.need.toMm(),
      cut: minor(b.cut),
      bolts: b.boltCount,
      byTheBolt: minor(b.bolts),
      overMm: b.over.toMm(),
      breakEvenMm: b.breakEven.toMm(),
      saves: minor(b.saves),
      worth: b.worth,
      taken: b.taken,
      divided: b.divided.cut.map((parts) =>
        parts.map(({ maker, length }) => ({ maker, lengthMm: length.toMm() })),
      ),
    })),
    alternatives: alternatives
      .filter((a) => room === null || a.room === room)
      .map((a) => ({
        room: a.room,
        item: a.item,
        title: a.title,
        stands: a.stands,
        trade: minor(a.cost.trade),
        client: minor(a.cost.client),
        more: minor(a.more),
        open: a.cost.open,
      })),
  };
}
