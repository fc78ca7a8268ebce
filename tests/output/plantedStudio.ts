import { cp, mkdir, mkdtemp, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import sharp from "sharp";

// Two clients' houses with words and sums that only some may read. Made up.

const CONTENT = resolve(import.meta.dirname, "../../content");

/** A supplier whom the client may know, and that supplier's account, which nobody may; one of whom nothing was said. */
export const DISCLOSED = { name: "Zwtsupplieropen", account: "Zwtopenaccount" } as const;
export const UNSAID = "Zwtsupplierunsaid";

/** Words and sums planted where only the studio may look; each is found nowhere else. */
export const STUDIO_ONLY = {
  studioPrivate: "Zwtstudioprivate",
  clothPrivate: "Zwtclothprivate",
  objectPrivate: "Zwtobjectprivate",
  projectPrivate: "Zwtprojectprivate",
  roomPrivate: "Zwtroomprivate",
  itemPrivate: "Zwtitemprivate",
  supplier: "Zwtsupplierhidden",
  account: "Zwtaccount",
  supplierMail: "zwtsuppliermail",
  reference: "Zwtreference",
  photoFile: "zwtphotofile",
  objectPhotoFile: "zwtobjectfile",
  camera: "Zwtcamera",
  artist: "Zwtphotographer",
  tradePrice: "731.57",
  samplePrice: "613.19",
  waiver: "Zwtwaiverreason",
  approver: "Zwtapprover",
  approvedTotal: "77,341.29",
  payment: "6,173.41",
  paidFor: "Zwtpaidfor",
} as const;

/** The price of a yard, what it is multiplied by, and what else is money of the studio's: for no maker's eyes. */
export const NOT_FOR_MAKERS = {
  budget: "48,123",
  projectBudget: "97,531",
  clientMail: "zwtclientmail",
  clientPhone: "555-0177",
  clientAddress: "Zwtclientaddress",
  clientPrice: "1,463.14",
  designFee: "3,377",
} as const;

/** A maker's rate for work whose charge is agreed otherwise. */
export const REPLACED_RATE = "611.11";

/** As they are printed; a bare number could stand in a drawing. */
export const RATES = { bench: "$87.31", frame: "$943.27", hook: "$59.43" } as const;

/** Writes that studio into a new folder, and says where. */
export async function plant(): Promise<string> {
  const dir = await mkdtemp(join(tmpdir(), "roomcloth-secrets-"));
  await mkdir(join(dir, "cloths"), { recursive: true });
  await mkdir(join(dir, "objects"), { recursive: true });
  const s = STUDIO_ONLY;
  const m = NOT_FOR_MAKERS;
  await sharp(join(CONTENT, "cloths/caraway.jpg"))
    .withExif({
      IFD0: { Make: s.camera, Artist: s.artist, ImageDescription: s.camera },
      IFD3: { GPSLatitudeRef: "N", GPSLatitude: "51/1 30/1 3230/100" },
    })
    .jpeg()
    .toFile(join(dir, `cloths/${s.photoFile}.jpg`));
  await cp(
    join(CONTENT, "objects/harbour-picture.jpg"),
    join(dir, `objects/${s.objectPhotoFile}.jpg`),
  );
  await writeFile(
    join(dir, "studio.md"),
    `---
studio: Alder Lane Rooms
language: en-US
units: inches
currency: USD
paper: tabloid
markup: { cloth: 2, making: 1.5 }
makers:
  bench: { name: Bench Street Workroom, makes: [curtains, cushion], lead: 4 weeks, rates: { curtains: ${RATES.bench.slice(1)} per width, cushion: 20 per item } }
  frame: { name: Frame and Daughter, makes: [armchair], rates: { armchair: ${REPLACED_RATE} per item } }
  hook: { name: Hook Fitting, makes: [fitting], rates: { fitting: ${RATES.hook.slice(1)} per hour } }
suppliers:
  hidden: { name: ${s.supplier}, disclose: no, account: ${s.account}, lead: 97 days, email: ${s.supplierMail}@mill.example }
  open: { name: ${DISCLOSED.name}, disclose: yes, account: ${DISCLOSED.account} }
  unsaid: { name: ${UNSAID} }
private: ${s.studioPrivate}
---
`,
  );
  const cloth = (name: string, more: string): string =>
    `---\ncloth: ${name}\nwidth: 54"\n${more}---\n`;
  await writeFile(
    join(dir, "cloths/sprig.md"),
    cloth(
      "Sprig",
      `photo: { file: ${s.photoFile}.jpg, shows: 9" }\nkind: small-print\nrepeat: { up: 2 5/8", across: 1 1/8", match: straight }\nsupplier: hidden\nreference: ${s.reference}\nprice: { trade: ${s.tradePrice}, per: yard }\nsample: { fee: ${s.samplePrice}, credited: no }\nprivate: ${s.clothPrivate}\n`,
    ),
  );
  await writeFile(
    join(dir, "cloths/plain.md"),
    cloth(
      "Plain",
      'kind: plain\ncolours:\n  - { colour: "#8a7a66" }\nsupplier: open\nprice: { trade: 10, per: yard }\n',
    ),
  );
  await writeFile(
    join(dir, "objects/view.md"),
    `---\nobject: The view\nshape: picture\nphoto: { file: ${s.objectPhotoFile}.jpg, shows: 24" }\nsize: 24" x 18"\nowner: client\nprivate: ${s.objectPrivate}\n---\n`,
  );
  const project = async (id: string, client: string, room: string, more: string): Promise<void> => {
    await mkdir(join(dir, "projects", id), { recursive: true });
    await writeFile(
      join(dir, "projects", id, "project.md"),
      `---\nproject: House of ${id}\nclient: { name: ${client}, address: ${m.clientAddress}${id}, email: ${m.clientMail}${id}@post.example, phone: ${m.clientPhone} }\ndelivery: The workroom door\nstatus: proposed\ndated: 2026-11-20\nfitting: 2027-09-13\nfees: { design: "${m.designFee}" }\nbudget: ${m.projectBudget}\napprovals: [{ revision: A, by: ${s.approver}, on: 2026-11-01, total: "${s.approvedTotal}" }]\npayments: [{ amount: "${s.payment}", on: 2026-11-02, what: ${s.paidFor} }]\nprivate: ${s.projectPrivate}\n---\n`,
    );
    await writeFile(
      join(dir, "projects", id, `${room}.md`),
      `---\nroom: ${room} ${id}\nheight: 8' 6"\nfloor: 14' x 12'\nanchor: view\nbudget: ${m.budget}\ncloths: [sprig, plain]\nprivate: ${s.roomPrivate}\naccept:\n  - { finding: no-photograph, of: [plain], because: ${s.waiver} }\nitems:\n  - object: view\n    at: { wall: south, from-left: 3', height: 50" }\n  - curtains: Bay ${id}\n    cloth: sprig\n    pole: 80"\n    drop: 80"\n    heading: pencil-pleat\n    maker: bench\n    private: ${s.itemPrivate}\n  - armchair: Carver ${id}\n    cloth: plain\n    size: 30" x 30" x 36"\n    pieces: [{ piece: seat, size: 22" x 22" }]\n    making: ${RATES.frame.slice(1)}\n    maker: frame\n${more}---\nThe words for ${client}.\n`,
    );
  };
  await project("quillon", "Ottoline Quillon", "den", "");
  await project("varley", "Barnaby Varley", "hall", "");
  return dir;
}
