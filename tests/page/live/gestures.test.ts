/// <reference lib="dom" />
import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { describeLive, layersOf, settled, textOf, typeFile, WRONG_SIDE, wordOf } from "./live-page.ts";

const PHONE = 390;

/** A drag by finger, as the browser sends it. */
async function dragByFinger(page: Page, from: { x: number; y: number }, to: { x: number; y: number }): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const send = (type: "touchStart" | "touchMove" | "touchEnd", points: { x: number; y: number }[]) =>
    session.send("Input.dispatchTouchEvent", { type, touchPoints: points });
  await send("touchStart", [from]);
  for (let step = 1; step <= 10; step += 1) {
    await send("touchMove", [{ x: from.x + ((to.x - from.x) * step) / 10, y: from.y + ((to.y - from.y) * step) / 10 }]);
    await page.waitForTimeout(16);
  }
  await send("touchEnd", []);
}

/** A tap on what is in view and at rest: the browser takes no tap for a click while the page still scrolls under it. */
async function tap(page: Page, target: Locator): Promise<void> {
  await target.scrollIntoViewIfNeeded();
  await settled(page);
  await target.tap();
  await settled(page);
}

const middleOf = async (page: Page, selector: string): Promise<{ x: number; y: number }> => {
  const { x, y, width, height } = (await page.locator(selector).boundingBox())!;
  return { x: x + width / 2, y: y + height / 2 };
};

describeLive("gestures of the live page", ({ open, reopen }) => {
  test("begins with starters, an answer and flags; asks for nothing, breaks no policy of its own and says nothing to the console", async () => {
    const { page, requests, messages } = await open({
      before: () =>
        addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI }) => {
          throw new Error(`stopped by ${violatedDirective}: ${blockedURI}`);
        }),
    });
    expect(await wordOf(page)).toBe("change it");
    expect(await page.locator(".starters li").count()).toBe(7);
    expect(await page.locator(".flag").count()).toBe(6);
    expect(requests.filter((url) => !url.startsWith("file:") && !url.startsWith("blob:"))).toEqual([]);
    expect(messages).toEqual([]);
  });

  test("a flag moves the sheet there, its comment with it; undo gives the same bytes, redo too", async () => {
    const { page } = await reopen({ project: WRONG_SIDE });
    expect(await wordOf(page)).toBe("change it");
    await page.getByLabel(/^1\|2, between gypsum plasterboard and mineral wool slab: sound/).check();
    await settled(page);
    expect(await wordOf(page)).toMatch(/^sound/);
    const lines = WRONG_SIDE.split("\n");
    const moved = [...lines.slice(0, 12), lines[13], lines[12], ...lines.slice(14)].join("\n");
    expect(await textOf(page)).toBe(moved);
    await page.keyboard.press("Control+z");
    await settled(page);
    expect(await textOf(page)).toBe(WRONG_SIDE);
    await page.keyboard.press("Control+y");
    await settled(page);
    expect(await textOf(page)).toBe(moved);
  });

  test("with no sheet a flag puts one in; “none” takes it out again", async () => {
    const { page } = await open();
    const before = await textOf(page);
    await page.getByLabel(/^1\|2,/).check();
    await settled(page);
    expect(await textOf(page)).toContain("      - { material: polyethylene sheet 0.15 mm, purpose: vapour layer }\n");
    expect(await wordOf(page)).toMatch(/^sound/);
    await page.getByLabel(/^none,/).check();
    await settled(page);
    expect(await textOf(page)).toBe(before);
  });

  test("in a cooled house in a hot climate the flags turn over by themselves", async () => {
    const { page } = await reopen({ project: WRONG_SIDE });
    const signs = () =>
      page
        .locator(".flag")
        .evaluateAll((flags) => flags.map((flag) => /sound|conditional|change/.exec(flag.className)![0]));
    const cold = await signs();
    await page.getByLabel("Place", { exact: true }).selectOption("melbourne-florida");
    await page.getByLabel("Use of the room: how damp its air is").selectOption("measured");
    await page.getByLabel("Cooling in summer").selectOption("yes");
    await page.getByLabel("Cooled to, °C").fill("22");
    await settled(page);
    const hot = await signs();
    expect(cold[2]).toBe("sound");
    expect(hot[2]).toBe("change");
    expect(cold[3]).toBe("change");
    expect(hot[3]).not.toBe("change");
    expect(await page.locator(".section").textContent()).toContain("vapour pushes in");
  });

  test.each([
    [1280, "WRONG", "ArrowLeft"],
    [PHONE, "WRONG", "ArrowLeft"],
  ])("%i px: arrow keys on a tab move the layer and keep the focus", async (width, _, key) => {
    const { page } = await reopen({ width, hasTouch: width === PHONE, project: WRONG_SIDE });
    await page.locator("#tab-2").focus();
    await page.keyboard.press(key);
    await settled(page);
    expect((await layersOf(page)).slice(0, 3)).toEqual(["gypsum plasterboard", "polythene", "mineral wool slab"]);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("tab-1");
  });

  test("a tab dragged by the mouse moves the layer, in one step to undo; former lines stay faint meanwhile", async () => {
    const { page } = await reopen({ project: WRONG_SIDE });
    const from = await middleOf(page, "#tab-2");
    const to = await middleOf(page, "#tab-0");
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move((from.x + to.x) / 2, from.y, { steps: 6 });
    expect(await page.locator(".lines.is-before").count()).toBe(1);
    await page.mouse.move(to.x - 30, to.y, { steps: 6 });
    await page.mouse.up();
    await settled(page);
    expect((await layersOf(page))[0]).toBe("polythene");
    expect(await page.locator(".lines.is-before").count()).toBe(0);
    await page.getByRole("button", { name: "Undo" }).click();
    expect(await textOf(page)).toBe(WRONG_SIDE);
  });

  test("the sheet is taken hold of in the section itself", async () => {
    const { page } = await reopen({ project: WRONG_SIDE });
    const sheet = await page.evaluate(() => {
      const box = document.querySelector(".vapour-layer")!.getBoundingClientRect();
      return { x: box.x + box.width / 2, y: box.y + 60 };
    });
    await page.mouse.move(sheet.x, sheet.y);
    await page.mouse.down();
    await page.mouse.move(sheet.x - 330, sheet.y, { steps: 10 });
    await page.mouse.up();
    await settled(page);
    expect((await layersOf(page)).indexOf("polythene")).toBeLessThan(2);
  });

  test("a finger drags a tab, and pulls a layer's edge", async () => {
    const { page } = await reopen({ width: PHONE, hasTouch: true, project: WRONG_SIDE });
    await page.locator("#tab-0").scrollIntoViewIfNeeded();
    const to = await middleOf(page, "#tab-0");
    await dragByFinger(page, await middleOf(page, "#tab-2"), { x: to.x - 15, y: to.y });
    await settled(page);
    expect((await layersOf(page))[0]).toBe("polythene");
    await tap(page, page.getByRole("button", { name: "Undo" }));
    expect((await layersOf(page))[0]).toBe("gypsum plasterboard");
    await tap(page, page.locator("#tab-1"));
    await page.locator(".edge").scrollIntoViewIfNeeded();
    await settled(page);
    const edge = await middleOf(page, ".edge");
    await dragByFinger(page, edge, { x: edge.x - 40, y: edge.y });
    await settled(page);
    const thickness = Number(/mineral wool slab, thickness: (\d+) mm/.exec(await textOf(page))![1]);
    expect(thickness).toBeLessThan(130);
    expect(thickness % 5).toBe(0);
  });

  test("a lying roof: its tabs move by up and down, by key and by finger", async () => {
    const { page } = await open({ width: PHONE, hasTouch: true });
    await page.getByRole("button", { name: /^warm flat roof/ }).tap();
    await settled(page);
    const before = await layersOf(page);
    await page.locator("#tab-3").focus();
    await page.keyboard.press("ArrowUp");
    await settled(page);
    expect((await layersOf(page))[4]).toBe(before[3]);
    await page.locator("#tab-4").scrollIntoViewIfNeeded();
    const from = await middleOf(page, "#tab-4");
    await dragByFinger(page, from, { x: from.x, y: from.y + 110 });
    await settled(page);
    expect((await layersOf(page)).indexOf(before[3]!)).toBeLessThan(4);
  });

  test("thickness: by button, by typing through values that cannot be, by key on the edge", async () => {
    const { page } = await reopen({ project: WRONG_SIDE });
    await page.getByRole("button", { name: "2 mineral wool slab: thicker" }).click();
    expect(await textOf(page)).toContain("thickness: 145 mm, framing");
    const field = page.getByLabel("Thickness of layer 2, mineral wool slab, mm");
    await field.fill("");
    await field.pressSequentially("0.005");
    expect(await field.inputValue()).toBe("0.005");
    expect(await textOf(page)).toContain("thickness: 145 mm, framing");
    await field.fill("60.5");
    expect(await textOf(page)).toContain("thickness: 60.5 mm, framing");
    await field.fill("195");
    await page.locator("#tab-1").click();
    await page.getByRole("slider", { name: "Thickness of mineral wool slab, mm" }).press("ArrowRight");
    expect(await textOf(page)).toContain("thickness: 200 mm, framing");
  });

  test("layers: added, exchanged, moved, taken out, ventilated, studs through it or not", async () => {
    const { page } = await reopen({ project: WRONG_SIDE });
    await page.getByRole("button", { name: "Add a layer outside" }).click();
    await page.getByLabel("Search").fill("cork");
    await page.getByRole("button", { name: /^expanded cork/ }).click();
    await settled(page);
    expect((await layersOf(page)).at(-1)).toBe("expanded cork");
    await page.getByRole("button", { name: "Exchange" }).click();
    await page.getByText("Values from a datasheet").click();
    await page.getByLabel("Name").fill("my board");
    await page.getByLabel("Conductivity λ, W/(m·K)").fill("0.05");
    await page.getByLabel("Vapour resistance factor μ").fill("4");
    await page.getByLabel("Thickness, mm").fill("30");
    await page.getByRole("button", { name: "Use these values" }).click();
    await settled(page);
    expect(await textOf(page)).toContain(
      "- { material: { name: my board, conductivity: 0.05 W/(m K), vapour resistance factor: 4 }, thickness: 30 mm }\n",
    );
    await page.getByRole("button", { name: "Towards the room" }).click();
    expect((await layersOf(page)).at(-1)).toBe("cladding");
    await page.getByRole("button", { name: "Take out" }).click();
    expect(await textOf(page)).toBe(WRONG_SIDE);
    await page.locator(".what").nth(1).click();
    await page.getByLabel("studs through it").uncheck();
    expect(await textOf(page)).toContain("{ material: mineral wool slab, thickness: 140 mm }");
    await page.locator(".what").nth(5).click();
    await page.getByLabel("Ventilation of layer 6").selectOption("slight");
    expect(await textOf(page)).toContain("{ air: 25 mm, ventilation: slight, open: both ends }");
  });

  test("the sentence changes what it says, and the file with it", async () => {
    const { page } = await reopen({ project: WRONG_SIDE });
    await page.getByLabel("When it is heated").selectOption("2");
    await page.getByLabel("Use of the room: how damp its air is").selectOption("class 5");
    await page.getByLabel("Heated to, °C").fill("18");
    await page.getByLabel("Target U, W/(m²·K)").fill("0.2");
    expect(await textOf(page)).toContain("indoor: { heating: 18 °C, humidity: class 5, heated days: 2 }\n");
    expect(await textOf(page)).toContain("target: 0.2 W/(m2 K)\n");
    await page.getByLabel("Target U, W/(m²·K)").fill("");
    expect(await textOf(page)).not.toContain("target:");
    await page.getByLabel("Heating").first().selectOption("not heated");
    expect(await textOf(page)).toContain("indoor: { unheated: true }\n");
  });

  test("the year begins with the water; the frame slides by key and finger; it runs", async () => {
    const { page } = await reopen({ project: WRONG_SIDE });
    const months = await page.locator(".strip li b").allTextContents();
    expect(months[0]).toBe("Oct");
    const slider = page.getByLabel("Month");
    await slider.focus();
    const shown = () => page.locator(".month-words").textContent();
    const before = await shown();
    await page.keyboard.press("ArrowRight");
    await settled(page);
    expect(await shown()).not.toBe(before);
    expect(await slider.getAttribute("aria-valuetext")).toBe(await shown());
    await page.getByRole("button", { name: "Run the year" }).click();
    await expect.poll(async () => Number(await slider.inputValue()), { interval: 20 }).toBeGreaterThan(3);
    await page.getByRole("button", { name: "Stop" }).click();
    await settled(page);
    expect(Number(await slider.inputValue())).toBeGreaterThan(3);
  });

  test("lines in Pa, along the other path, and the figures as a table", async () => {
    const { page } = await reopen({ project: WRONG_SIDE });
    await page.getByLabel("Pa", { exact: true }).check();
    await settled(page);
    expect(await page.locator(".section").textContent()).toContain("saturation pressure");
    await page.getByText("Figures of").click();
    const between = await page.locator(".figures tbody").textContent();
    await page.getByLabel("through studs").check();
    await settled(page);
    expect(await page.locator(".figures tbody").textContent()).not.toBe(between);
  });

  test("a remedy is tried: the wall becomes what was worked out, in one step to undo", async () => {
    const { page } = await reopen({ project: WRONG_SIDE });
    const first = page.getByRole("button", { name: /^Try it/ }).first();
    const told = await page.locator(".told .rows li .quiet").first().textContent();
    await first.click();
    await settled(page);
    expect(await wordOf(page)).toBe(/^[^,]+/.exec(told!)![0]);
    await page.getByRole("button", { name: "Undo" }).click();
    expect(await textOf(page)).toBe(WRONG_SIDE);
  });

  test("a change that the file could not be read with is not made, and told", async () => {
    const variant = "    variants:\n      - { name: open, changes: [ { remove: polythene } ] }\n";
    const { page } = await reopen({ project: WRONG_SIDE + variant });
    await page.getByLabel(/^none,/).click();
    expect(await page.locator(".remark").textContent()).toMatch(/^Not changed\. .*polythene/);
    expect(await textOf(page)).toBe(WRONG_SIDE + variant);
    expect(await page.getByLabel(/^3\|4|^2\|4/).isChecked()).toBe(true);
  });

  test("several build-ups: each with its mark, only the shown one changes", async () => {
    const second = WRONG_SIDE.slice(WRONG_SIDE.indexOf("  - name"))
      .replace("name: Wall", "name: Other wall")
      .replace("140 mm", "90 mm");
    const { page } = await reopen({ project: WRONG_SIDE + second });
    expect(await page.locator(".build-ups li .unseen").allTextContents()).toEqual([", change it", ", change it"]);
    await page.getByRole("button", { name: /^Other wall/ }).click();
    await page.getByLabel(/^1\|2,/).check();
    await settled(page);
    expect((await page.locator(".build-ups li .unseen").allTextContents())[0]).toBe(", change it");
    expect((await page.locator(".build-ups li .unseen").allTextContents())[1]).toMatch(/^, sound/);
    expect((await textOf(page)).startsWith(WRONG_SIDE)).toBe(true);
  });

  test("a text with faults keeps the picture, lists the problems by line, and “Write it” puts them right", async () => {
    const { page } = await reopen({ project: WRONG_SIDE });
    const drawing = () => page.locator(".section").innerHTML();
    const before = await drawing();
    await typeFile(page, WRONG_SIDE.replace("140 mm", "140").replace("climate: de-bilt", "climate: de-blit"));
    expect(await page.locator(".problems h2").textContent()).toBe("The project file has 2 problems");
    expect(await page.locator(".problems li").first().textContent()).toContain("Line 3");
    expect(await drawing()).toBe(before);
    expect(await page.locator(".old").textContent()).toContain("the last text that could be read");
    await page.getByRole("button", { name: "Line 13" }).click();
    const chosen = await page
      .locator("#file-text")
      .evaluate((area: HTMLTextAreaElement) => area.value.slice(area.selectionStart, area.selectionEnd));
    expect(chosen).toContain("mineral wool slab");
    const writeIt = page.getByRole("button", { name: /^Write it/ });
    for (const left of [1, 0]) {
      await writeIt.first().click();
      await expect.poll(() => writeIt.count()).toBe(left);
    }
    await settled(page);
    expect(await textOf(page)).toBe(WRONG_SIDE);
    expect(await page.locator(".problems").count()).toBe(0);
  });
});
