/** The part of selenium-webdriver that the tests use; the package brings no types. */
declare module 'selenium-webdriver' {
  interface Actions {
    move(to: { x: number; y: number; duration?: number }): Actions;
    click(): Actions;
    keyDown(key: string): Actions;
    keyUp(key: string): Actions;
    sendKeys(...keys: string[]): Actions;
    perform(): Promise<void>;
  }
  export interface WebDriver {
    get(url: string): Promise<void>;
    executeAsyncScript(script: string, ...args: unknown[]): Promise<unknown>;
    actions(): Actions;
    getWindowHandle(): Promise<string>;
    getAllWindowHandles(): Promise<string[]>;
    switchTo(): { window(handle: string): Promise<void>; newWindow(kind: 'tab' | 'window'): Promise<void> };
    manage(): {
      window(): { setRect(rect: { width: number; height: number; x: number; y: number }): Promise<unknown> };
    };
    close(): Promise<void>;
    quit(): Promise<void>;
  }
  export class Capabilities {
    setBrowserName(name: string): this;
    set(key: string, value: unknown): this;
  }
  export class Builder {
    usingServer(url: string): this;
    withCapabilities(capabilities: Capabilities): this;
    build(): Promise<WebDriver>;
  }
  export const Key: Record<string, string>;
}
