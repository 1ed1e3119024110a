import { cautions, type CautionSubject } from "../src/cautions";

const DEFERS =
  /\b(codes?|authority|instructions|manufacturer's|manual|licensed|rules|utility|label|law)\b/;

/** Spellings of other countries, and words that say less than they should. */
const OTHER_WORDS = /neighbour|fertilis|licence|metre|labour|maker's|\bhead for\b/i;

describe.each(Object.entries(cautions))("%s", (_, { title, brief, points }) => {
  test("has a title and several plain sentences", () => {
    expect(title).toMatch(/^[A-Z].*[^.]$/);
    expect(points.length).toBeGreaterThanOrEqual(3);
    for (const point of points) expect(point).toMatch(/^[A-Z].*\.$/);
    expect(new Set(points).size).toBe(points.length);
    expect([title, brief, ...points].join(" ")).not.toMatch(OTHER_WORDS);
  });

  test("has one sentence for the help in a cell", () => {
    expect(brief).toMatch(/^[A-Z][^.]*\.$/);
    expect(brief.length).toBeLessThanOrEqual(160);
  });

  test("ends by deferring to codes, instructions or licensed practice", () => {
    expect(points[points.length - 1]).toMatch(DEFERS);
  });
});

/** What each subject may not leave out, as words that its points must hold. */
const due: readonly (readonly [CautionSubject, readonly RegExp[]])[] = [
  [
    "pressure",
    [
      /close the supply, stop the pump, open the lowest drain .* see the flow stop/,
      /A gauge can stick/,
      /check valve, a regulator or a closed quick connect can hold pressure/,
      /zero on one gauge is no proof/,
      /slowly, .*standing to the side/,
      /Do not leave a pump running against closed valves.* scald or burst/,
      /Heat weakens polyethylene.*temperature of its wall/,
    ],
  ],
  [
    "electricity",
    [
      /lock the disconnect open, tag it, then try the start\. The pump must not turn/,
      /That does not prove .* dead/,
      /qualified person with a tested meter/,
    ],
  ],
  [
    "flushing",
    [
      /Shut off and drain .* before the end cap comes off/,
      /Stake or weigh down the open end/,
      /away from people, roads and wires/,
      /Open slowly, from the other end/,
      /whip/,
    ],
  ],
  [
    "towing",
    [
      /hitch point only, low and in line/,
      /rope held in or wrapped round a hand; lifting a line by hand is another thing/,
      /fingers out of pins and couplings/,
      /No passengers, and no children near/,
    ],
  ],
  [
    "drilling",
    [
      /Never drill or tap a saddle into pipe that is under pressure/,
      /battery drill/,
      /chips/,
      /eye/,
    ],
  ],
  ["rolls and ice", [/straps one at a time.* to the side/, /springs?\b/, /may hold ice/]],
  ["lightning", [/30 minutes after the last thunder/]],
  ["buried lines", [/in the United States call 811 first, elsewhere the local locating service/]],
  [
    "plan on the ground",
    [
      /is no survey/,
      /no buried line and no overhead wire/,
      /lowest corner with every valve shut.*static pressure/,
      /beyond the edge.*roads, neighbors/,
    ],
  ],
  ["fuel", [/Fuel gas.* licensed gas technician/]],
  ["compressed air", [/do not drain by gravity.* qualified contractor with low-pressure air/]],
  [
    "treated water",
    [/out of the spray/, /re-entry time on the label/, /Post signs where the law asks/],
  ],
];

test.each(due)("%s says all that it must", (subject, words) => {
  const text = cautions[subject].points.join(" ");
  for (const word of words) expect(text).toMatch(word);
});
