/** A room's file as far as its curtains' heading. */
export const BAY = `room: Den
cloths: [linen]
items:
  - curtains: Bay
    cloth: linen
    pole: 96"
    drop: 90"
    heading: pencil-pleat
`;

/** A studio that buys a cloth, two iron poles and three lamps for one room. */
export const files = (project: string) => ({
  "studio.md": `studio: Alder Lane Rooms
language: en-US
units: inches
currency: USD
paper: tabloid
markup: { cloth: 2, hardware: 1.5, objects: 1.5 }
makers:
  bench: { name: Bench, makes: [curtains], rates: { curtains: 50 per width } }
  frame: { name: Frame, makes: [cushion], rates: { cushion: 30 per item } }
suppliers: { mill: { name: The mill }, forge: { name: The forge } }`,
  "cloths/linen.md": `cloth: Linen\nwidth: 54"\nkind: plain\ncolours: [{ colour: "#8a7a66" }]\nsupplier: mill\nprice: { trade: 40, per: yard, bolt: { length: 20 yd, trade: 30 } }`,
  "objects/lamp.md": `object: Brass lamp\nshape: lamp\nsize: 12" x 12" x 24"\nsupplier: forge\nprice: { trade: 90 }`,
  "projects/quay/project.md": `project: Quay\nclient: { name: Nobody }\nstatus: proposed\ndated: 2026-11-20\n${project}`,
  "projects/quay/den.md": `${BAY}    maker: bench
    hardware: [{ what: iron pole, supplier: forge, trade: 60, count: 2 }]
  - cushion: Seat
    cloth: linen
    size: 20" x 20"
    edge: knife
    maker: frame
  - object: lamp
    count: 3`,
});
