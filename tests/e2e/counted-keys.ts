import { expect, type Locator, type Page } from '@playwright/test';

export interface Step {
  readonly step: string;
  readonly keys: number;
  readonly took_ms: number;
}

/** A keyboard that counts what is pressed on it, step by step; the mouse is not touched. */
export class CountedKeys {
  private readonly page: Page;
  private keys = 0;
  private began = { keys: 0, at: performance.now() };
  readonly steps: Step[] = [];

  constructor(page: Page) {
    this.page = page;
  }

  /** All keys so far. */
  get total(): number {
    return this.keys;
  }

  async press(key: string): Promise<void> {
    this.keys += 1;
    await this.page.keyboard.press(key);
  }

  async type(text: string): Promise<void> {
    this.keys += text.length;
    await this.page.keyboard.type(text);
  }

  /** Tab until it has the focus. */
  async tabTo(target: Locator): Promise<void> {
    await expect(target).toBeVisible();
    for (let press = 0; press < 120; press += 1) {
      if (await target.evaluate((element) => element === document.activeElement)) return;
      await this.press('Tab');
    }
    throw new Error(`Tab never came to ${target.toString()}.`);
  }

  async enter(target: Locator): Promise<void> {
    await this.tabTo(target);
    await this.press('Enter');
  }

  async typeAt(target: Locator, text: string): Promise<void> {
    await this.tabTo(target);
    await this.press('Control+A');
    await this.type(text);
  }

  /** Ends a step: what was pressed since the last one belongs to it. */
  done(step: string): void {
    const at = performance.now();
    this.steps.push({ step, keys: this.keys - this.began.keys, took_ms: Math.round(at - this.began.at) });
    this.began = { keys: this.keys, at };
  }
}
