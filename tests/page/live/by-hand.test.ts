/// <reference lib="dom" />
import { assessProject, readProjectOrThrow } from "@warmside/core";
import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { isLong } from "../../how-many.ts";
import { readCase } from "../../practice/cases.ts";
import { describeLive, drawn, type Opening, settled, textOf } from "./live-page.ts";

/** Somebody at the page who has a question of the practice corpus: every click, choice and figure typed is an action. */
class Hand {
  readonly page: Page;
  /** By finger on a telephone, else by mouse. */
  readonly touches: boolean;
  actions = 0;

  constructor(page: Page, touches: boolean) {
    this.page = page;
    this.touches = touches;
  }

  /** A click or a tap. */
  async point(at: Locator): Promise<void> {
    this.actions += 1;
    await (this.touches ? at.tap() : at.click());
    await drawn(this.page);
  }

  async press(name: string | RegExp): Promise<void> {
    await this.point(this.page.getByRole("button", { name }).first());
  }

  async choose(label: string | RegExp, value: string): Promise<void> {
    this.actions += 1;
    await this.page.getByLabel(label).first().selectOption(value);
    await drawn(this.page);
  }

  async type(label: string | RegExp, value: number): Promise<void> {
    this.actions += 1;
    await this.page.getByLabel(label).first().fill(String(value));
    await drawn(this.page);
  }

  /** A layer in front of or behind another: chosen from what is offered first, or searched for. */
  async put(where: string | RegExp, name: string, search?: string): Promise<void> {
    await this.press(where);
    await this.pick(name, search);
  }

  async exchange(layer: number, name: string, search?: string): Promise<void> {
    await this.takeUp(layer);
    await this.press("Exchange");
    await this.pick(name, search);
  }

  /** A layer exchanged for one whose values are on a datasheet. */
  async datasheet(layer: number, values: Record<string, string | number>, kind: string): Promise<void> {
    await this.takeUp(layer);
    await this.press("Exchange");
    await this.point(this.page.getByText("Values from a datasheet"));
    for (const [label, value] of Object.entries(values)) {
      this.actions += 1;
      await this.page.locator(".own").getByLabel(label).fill(String(value));
    }
    await this.choose("What it is made of", kind);
    await this.press("Use these values");
  }

  async takeUp(layer: number): Promise<void> {
    await this.point(this.page.locator(`#tab-${layer - 1}`));
  }

  async thickness(layer: number, millimetres: number): Promise<void> {
    await this.type(new RegExp(`^Thickness of layer ${layer},`), millimetres);
  }

  /** The sheet by its flag. */
  async flag(between: string): Promise<void> {
    await settled(this.page);
    await this.point(this.page.getByLabel(new RegExp(`^${between.replace("|", "\\|")},`)));
    await settled(this.page);
  }

  private async pick(name: string, search?: string): Promise<void> {
    if (search !== undefined) {
      this.actions += 1;
      await this.page.getByLabel("Search").fill(search);
      await drawn(this.page);
    }
    const offered = this.page.locator(".shelves").getByRole("button", { name: new RegExp(`^${name}( |$)`) });
    await this.point(offered.first());
  }
}

const HEATED = "Heated to, °C";
const USE = "Use of the room: how damp its air is";

/** Ten questions, each with what is done and how many actions it may take. */
const QUESTIONS: [file: string, most: number, enter: (hand: Hand) => Promise<void>][] = [
  [
    "03-wood-fibre-wall.yaml",
    13,
    async (hand) => {
      await hand.press(/^stud wall/);
      await hand.exchange(2, "cellulose blown", "cellulose");
      await hand.thickness(2, 200);
      await hand.takeUp(3);
      await hand.press("Towards the room");
      await hand.thickness(2, 15);
      await hand.exchange(4, "wood fibre insulation board");
      await hand.thickness(4, 60);
    },
  ],
  [
    "06-cooled-shop-sheet-inside.yaml",
    10,
    async (hand) => {
      await hand.press(/^stud wall/);
      await hand.choose("Place", "melbourne-florida");
      await hand.choose(USE, "measured");
      await hand.choose("Cooling in summer", "yes");
      await hand.type("Cooled to, °C", 22);
      await hand.thickness(2, 90);
      await hand.type("Width of the studs, mm", 38);
      await hand.type("Spacing of the studs, mm", 400);
      await hand.thickness(5, 20);
      await hand.flag("1|2");
    },
  ],
  [
    "10-nordic-wall.yaml",
    15,
    async (hand) => {
      await hand.press(/^stud wall/);
      await hand.choose("Place", "oslo");
      await hand.choose(USE, "class 2");
      await hand.thickness(2, 200);
      await hand.type("Width of the studs, mm", 48);
      await hand.exchange(3, "fibreboard 250", "fibreboard");
      await hand.thickness(3, 12);
      await hand.takeUp(4);
      await hand.press("Take out");
      await hand.thickness(4, 23);
      await hand.thickness(5, 19);
      await hand.flag("1|2");
    },
  ],
  [
    "13-rain-wetted-brick-lined-inside.yaml",
    16,
    async (hand) => {
      await hand.press(/^lined masonry/);
      await hand.choose("Place", "heathrow");
      await hand.exchange(2, "polyethylene sheet 0.15 mm");
      await hand.thickness(3, 95);
      await hand.choose("Rain reaches its outside", "yes");
      await hand.datasheet(
        4,
        { Name: "clay brick", "Conductivity λ, W/(m·K)": 0.77, "Vapour resistance factor μ": 10, "Thickness, mm": 215 },
        "mineral",
      );
    },
  ],
  [
    "21-steel-box-bonded-foam.yaml",
    15,
    async (hand) => {
      await hand.press(/^container/);
      await hand.choose("Place", "heathrow");
      await hand.type(HEATED, 18);
      await hand.choose(USE, "class 2");
      await hand.exchange(1, "gypsum plasterboard");
      await hand.takeUp(2);
      await hand.press("Take out");
      await hand.exchange(2, "polyurethane foam unfaced", "foam");
      await hand.thickness(2, 80);
      await hand.point(hand.page.getByLabel("battens through it"));
    },
  ],
  [
    "25-warm-roof-with-vapour-layer.yaml",
    9,
    async (hand) => {
      await hand.press(/^warm flat roof/);
      await hand.exchange(3, "oriented strand board");
      await hand.exchange(6, "bitumen sheet", "bitumen sheet");
      await hand.thickness(6, 5);
    },
  ],
  [
    "29-cold-roof-ventilated.yaml",
    9,
    async (hand) => {
      await hand.press(/^cold flat roof/);
      await hand.choose("Place", "heathrow");
      await hand.choose(USE, "class 2");
      await hand.type("Width of the joists, mm", 45);
      await hand.thickness(3, 150);
      await hand.exchange(5, "plywood");
      await hand.thickness(6, 5);
    },
  ],
  [
    "39-raised-floor.yaml",
    9,
    async (hand) => {
      await hand.press(/^raised floor/);
      await hand.choose("Place", "heathrow");
      await hand.choose(USE, "class 2");
      await hand.type("Width of the joists, mm", 45);
      await hand.exchange(1, "particleboard", "particleboard");
      await hand.thickness(2, 150);
    },
  ],
  [
    "45-damp-room-wall.yaml",
    13,
    async (hand) => {
      await hand.press(/^stud wall/);
      await hand.type(HEATED, 22);
      await hand.choose(USE, "class 5");
      await hand.exchange(1, "cement-bonded particleboard", "cement-bonded");
      await hand.thickness(1, 12);
      await hand.takeUp(3);
      await hand.put(/^Add a layer after 3/, "wood fibre insulation board");
      await hand.thickness(4, 60);
      await hand.flag("1|2");
    },
  ],
  [
    "60-plank-cabin.yaml",
    7,
    async (hand) => {
      await hand.press(/^log cabin/);
      await hand.choose("Place", "munich");
      await hand.choose(USE, "class 2");
      await hand.exchange(1, "softwood timber");
      await hand.thickness(1, 120);
    },
  ],
];

/** By turns at a desk, on a telephone and not at all; each at both where there is time. */
const PLACES: [where: string, opening: Opening, questions: typeof QUESTIONS][] = [
  ["at a desk", {}, QUESTIONS.filter((_, index) => isLong || index % 3 === 2)],
  [
    "on a telephone",
    { width: 390, hasTouch: true, isMobile: true },
    QUESTIONS.filter((_, index) => isLong || index % 3 === 1),
  ],
];

for (const [where, opening, questions] of PLACES) {
  describeLive(`questions of the practice corpus, entered by hand ${where}`, ({ open }) => {
    let page: Page | undefined;

    test.each(questions)("%s, in at most %i actions", async (file, most, enter) => {
      page ??= (await open(opening)).page;
      await page.getByRole("button", { name: "New", exact: true }).click();
      const hand = new Hand(page, opening.hasTouch === true);
      await enter(hand);
      await settled(page);
      const [entered] = assessProject(readProjectOrThrow(await textOf(page))).buildUps;
      const [asked] = assessProject(readCase(file)).buildUps;
      expect((await page.locator("#answer-word").textContent())!.trim()).toBe(asked!.judgement.word);
      expect(entered!.judgement.reasons.map((reason) => reason.split("/")[1])).toEqual(
        asked!.judgement.reasons.map((reason) => reason.split("/")[1]),
      );
      expect(entered!.heat!.transmittance).toBeCloseTo(asked!.heat!.transmittance, 2);
      expect(hand.actions).toBeLessThanOrEqual(most);
      if (process.env.WARMSIDE_SHOTS) {
        process.stdout.write(`${file} ${where}: ${hand.actions}\n`);
        await page.screenshot({ path: `${process.env.WARMSIDE_SHOTS}/${file} ${where}.png`, fullPage: true });
      }
    });
  });
}
