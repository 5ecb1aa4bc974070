import { readFileSync, existsSync } from "node:fs";
import type { Browser, Frame, Page } from "playwright-core";
import { distFile } from "./open";

/**
 * A stand-in for Excel on the web: a top page, inside it a page of the editor that speaks the messages of office.js
 * (read in the published office.js and excel-web-16.00.js; nobody here ran Excel), inside that the pane, which loads the
 * published scripts and our own, and so the functions. It answers what activation, custom functions and plain reads ask.
 */

const editor = "https://usc-excel.officeapps.live.com/x/_layouts/xlviewerinternal.aspx";
const addIn = "https://addins.example.com";
const office = "node_modules/@microsoft/office-js/dist/";

/** Host flags 2: a runtime for custom functions is wanted. */
const address = `${addIn}/taskpane.html?_host_Info=Excel$Web$16.01$en-US$corr$$$2$#&_xdm_Info=conv1|app1|`;

const editorPage = `<!doctype html><title>editor</title><script>
window.calls = []; window.results = []; window.pane = null;
const context = { _id: "app1", _appName: 16, _appVersion: "16.0", _appUILocale: "en-US", _dataLocale: "en-US", _docUrl: "https://contoso.sharepoint.com/book.xlsx", _clientMode: 1, _settings: {}, _reason: 1, _osfControlType: 1, _eToken: "", _correlationId: "c", _appInstanceId: "i1", _appMinorVersion: 1, _requirementMatrix: JSON.stringify({ ExcelApi: 1.17, CustomFunctions: 1.7, CustomFunctionsRuntime: 1.5, SharedRuntime: 1.2, RibbonApi: 1.2 }), _hostCustomMessage: "", _hostFullVersion: "16.0.1", _appDomains: [], _featureGates: {}, _wacHostEnvironment: "1", _addinName: "Kerfsheet" };
const bodyIn = (o) => {
  if (typeof o === "string") { try { const j = JSON.parse(o); if (j && j.Actions) return j; } catch {} return null; }
  if (o && typeof o === "object") for (const k in o) { const found = bodyIn(o[k]); if (found) return found; }
  return null;
};
addEventListener("message", (e) => {
  let m; try { m = JSON.parse(e.data); } catch { return; }
  window.pane = e.source; window.paneOrigin = e.origin;
  const send = (data) => e.source.postMessage(JSON.stringify({ _messageType: 1, _actionName: m._actionName, _conversationId: m._conversationId, _correlationId: m._correlationId, _origin: location.origin, _data: data, _errorCode: 0, _responseType: 0, _serializerVersion: 1 }), e.origin);
  if (m._messageType !== 0) return;
  calls.push(m._actionName);
  if (m._actionName === "ContextActivationManager_getAppContextAsync") return send(context);
  if (m._actionName === "executeMethod" && m._data?.DdaMethod?.DispatchId === 93) {
    const actions = bodyIn(m._data)?.Actions ?? [];
    for (const { Name, ArgumentInfo } of actions) {
      calls.push(Name);
      if (/^SetInvocation(Array)?Results$/.test(Name)) results.push(...ArgumentInfo.Arguments[0]);
    }
    const answer = JSON.stringify({ Results: actions.map((a) => ({ ActionId: a.Id, Value: {} })), ProcessedResults: [] });
    return send({ Error: 0, Version: 1, Data: [200, [], answer] });
  }
  send({ Error: 0, Version: 1 });
});
window.invoke = (calls) => {
  const entries = calls.map(([id, name, args]) => [1, 1000, "", JSON.stringify([id, name, args, "Sheet1!A1", 4]), id, false]);
  window.pane.postMessage(JSON.stringify({ _messageType: 1, _actionName: "richApiMessage", _conversationId: "conv1", _correlationId: 0, _origin: location.origin, _data: { ArrayData: entries }, _errorCode: 0, _responseType: 1, _serializerVersion: 1 }), window.paneOrigin);
};
</script><iframe id="pane" style="width:350px;height:700px"></iframe><script>
document.getElementById("pane").src = "${address}" + encodeURIComponent(location.href) + "|&_serializer_version=1&_flights=[]";
</script>`;

export interface Call {
  readonly name: string;
  readonly args: readonly unknown[];
}

/** A result, or the sentence of a refusal, with the host's number of its error. */
export interface Reply {
  readonly ok: boolean;
  readonly value: unknown;
}

export interface Host {
  readonly page: Page;
  readonly editor: Frame;
  readonly requests: ReadonlySet<string>;
  readonly violations: readonly string[];
  /** Methods that the pane has called of the host. */
  readonly calls: () => Promise<readonly string[]>;
  readonly paneText: () => Promise<string>;
  /** Whether the browser shows an error page where the pane should be. */
  readonly isBlocked: () => boolean;
  readonly invoke: (calls: readonly Call[]) => Promise<readonly Reply[]>;
}

/** The add-in inside the stand-in, under a top page of that address, served with these headers. */
export async function openHost(
  browser: Browser,
  top: string,
  headersOf: (path: string) => Readonly<Record<string, string>>,
): Promise<Host> {
  const page = await browser.newPage();
  const requests = new Set<string>();
  const violations: string[] = [];
  page.on("console", (m) => {
    if (m.text().startsWith("refused ")) violations.push(m.text());
  });
  await page.addInitScript(() => {
    document.addEventListener("securitypolicyviolation", (e) => {
      console.warn(`refused ${e.effectiveDirective} ${e.blockedURI} ${e.sample.slice(0, 40)}`);
    });
  });
  await page.route(/./, async (route) => {
    const url = new URL(route.request().url());
    requests.add(url.origin + url.pathname);
    if (route.request().url().startsWith(editor)) return route.fulfill({ contentType: "text/html", body: editorPage });
    if (url.origin === addIn) {
      const file = distFile(url.pathname);
      return file === undefined
        ? route.fulfill({ status: 404 })
        : route.fulfill({ ...file, headers: { ...headersOf(url.pathname) } });
    }
    if (url.hostname === "appsforoffice.microsoft.com") {
      const part = office + url.pathname.replace("/lib/1/hosted/", "");
      return existsSync(part)
        ? route.fulfill({ contentType: "text/javascript", body: readFileSync(part) })
        : route.fulfill({ status: 404 });
    }
    if (url.origin === new URL(top).origin)
      return route.fulfill({
        contentType: "text/html",
        body: `<!doctype html><title>top</title><iframe src="${editor}" style="width:800px;height:800px"></iframe>`,
      });
    return route.abort();
  });
  await page.goto(top);
  const frameOf = (start: string): Frame | undefined => page.frames().find((f) => f.url().startsWith(start));
  const window = frameOf(editor)!;
  let invoked = 0;
  return {
    page,
    editor: window,
    requests,
    violations,
    calls: () => window.evaluate(() => (globalThis as unknown as { readonly calls: string[] }).calls),
    paneText: async () => (await frameOf(addIn)?.evaluate(() => document.body.innerText)) ?? "",
    isBlocked: () => page.frames().some((f) => f.url().startsWith("chrome-error:")),
    invoke: async (calls) => {
      const ids = calls.map(() => (invoked += 1));
      await window.evaluate(
        (list) => {
          (globalThis as unknown as { readonly invoke: (calls: unknown) => void }).invoke(list);
        },
        calls.map(({ name, args }, i) => [ids[i], name, args]),
      );
      await window.waitForFunction(
        (last) => (globalThis as unknown as { readonly results: unknown[][] }).results.some((r) => r[0] === last),
        ids.at(-1),
        { timeout: 20_000 },
      );
      const results = await window.evaluate(() => (globalThis as unknown as { readonly results: unknown[][] }).results);
      return ids.map((id) => {
        const [, ok, value] = results.find((r) => r[0] === id)!;
        return { ok: ok === true, value };
      });
    },
  };
}
