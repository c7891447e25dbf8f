// The element for bundlers, built as index.js of its package: what it loads is named so that a bundler finds it.
import { app } from "element-app-file";
import { defineElement } from "./define-element";

defineElement({ version: app, from: () => import.meta.url, load: () => import("element-app") });
