/// <reference lib="dom" />
import { expect, test } from "vitest";
import { describeLive, settled, textOf, wordOf } from "./live-page.ts";

/** Foil-faced boards cut between studs, in a wall whose corner has too many posts. */
const FOIL_BETWEEN_STUDS = `project: Joints
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Wall
    element: wall
    framings:
      studs: { material: softwood timber, width: 45 mm, spacing: 600 mm }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: foil-faced PIR board, thickness: 90 mm, framing: studs }
      - { material: oriented strand board, thickness: 11 mm }
      - { material: breather membrane }
      - { air: 25 mm, ventilation: well }
      - { material: softwood timber, thickness: 20 mm }
`;
const CORNER = `junctions:
  - { name: Corner, outer corner: [Wall], posts: solid }
`;

describeLive("joints on the live page", ({ reopen }) => {
  test("tape over the studs and the gap beside them are said, and taken back", async () => {
    const { page } = await reopen({ project: FOIL_BETWEEN_STUDS });
    expect(await wordOf(page)).toBe("sound with conditions");
    await page.getByLabel("Gap between layer 2 and the studs, mm").fill("5");
    await settled(page);
    expect(await wordOf(page)).toBe("change it");
    await page.getByLabel("Foil of layer 2 taped over the studs").selectOption("yes");
    await settled(page);
    expect(await wordOf(page)).toBe("sound");
    expect(await textOf(page)).toMatch(/framing: studs, gap beside framing: 5 mm, taped: "?yes"? \}/);
    await page.getByLabel("Gap between layer 2 and the studs, mm").fill("");
    await page.getByLabel("Foil of layer 2 taped over the studs").selectOption("not said");
    await settled(page);
    expect(await textOf(page)).toBe(FOIL_BETWEEN_STUDS);
  });

  test("a corner that is too cold stays a condition", async () => {
    const { page } = await reopen({
      project: FOIL_BETWEEN_STUDS.replace("framing: studs }", "framing: studs, taped: yes }") + CORNER,
    });
    expect(await wordOf(page)).toBe("sound with conditions");
  });
});
