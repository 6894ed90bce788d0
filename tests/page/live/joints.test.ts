/// <reference lib="dom" />
import { expect, test } from "vitest";
import { FOIL_BETWEEN_STUDS } from "../../core/foil-between-studs.ts";
import { describeLive, settled, textOf, wordOf } from "./live-page.ts";

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

  test("what passes beside the studs is shown as a picture, drawn anew when the joint changes", async () => {
    const { page, messages } = await reopen({ project: FOIL_BETWEEN_STUDS });
    const plane = page.locator(".plane");
    const dots = plane.locator("svg > circle");
    await settled(page);
    expect(await plane.locator("strong").textContent()).toMatch(
      /^Vapour passes .* at the studs: \d+\sg\/m² beside them/,
    );
    expect(await dots.count()).toBeGreaterThan(0);
    expect(await plane.locator("svg").textContent()).toContain("in this strip");
    await page.getByLabel("Foil of layer 2 taped over the studs").selectOption("yes");
    await settled(page);
    expect(await plane.locator("strong").textContent()).toMatch(/condenses nowhere$/);
    expect(await dots.count()).toBe(0);
    await page.emulateMedia({ media: "print" });
    expect(await plane.isVisible()).toBe(false);
    await page.emulateMedia({ media: null });
    expect(messages).toEqual([]);
  });

  test("a corner that is too cold stays a condition", async () => {
    const { page } = await reopen({
      project: FOIL_BETWEEN_STUDS.replace("framing: studs }", "framing: studs, taped: yes }") + CORNER,
    });
    expect(await wordOf(page)).toBe("sound with conditions");
  });
});
