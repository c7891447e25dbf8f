// Which texts the page's sources say.

import { join, relative } from "node:path";
import { root } from "./built-engine.mjs";
import { pageModule, pageRequire } from "./page-modules.mjs";

const { english } = await pageModule("texts/en.ts");
const at = (tree, path) => path.reduce((node, key) => node?.[key], tree);

/**
 * The paths of all texts that the page's sources come to, or those of them that are meant, by their places in web/, by the compiler's own knowledge of what a name stands for. A group
 * that is handed on or looked up by a key, and not by a name, is used as a whole.
 */
export function usedTexts(isMeant = () => true) {
  const ts = pageRequire("typescript");
  const { config } = ts.readConfigFile(join(root, "web/tsconfig.json"), ts.sys.readFile);
  const { fileNames, options } = ts.parseJsonConfigFileContent(config, ts.sys, join(root, "web"));
  const program = ts.createProgram(fileNames, options);
  const checker = program.getTypeChecker();
  const file = join(root, "web/texts/en.ts");
  const used = new Set();

  const pathOf = (declaration) => {
    const path = [];
    for (let node = declaration; node; node = node.parent)
      if (ts.isPropertyAssignment(node)) path.unshift(node.name.text);
    return path;
  };
  const useWhole = (path) => {
    const node = at(english, path);
    if (typeof node === "string" || Array.isArray(node)) used.add(path.join("."));
    else for (const key of Object.keys(node)) useWhole([...path, key]);
  };
  const meet = (symbol, goesOn) => {
    for (const declaration of symbol?.declarations ?? []) {
      if (declaration.getSourceFile().fileName !== file || !ts.isPropertyAssignment(declaration)) continue;
      if (!goesOn || !ts.isObjectLiteralExpression(declaration.initializer)) useWhole(pathOf(declaration));
    }
  };
  const visit = (node) => {
    if (ts.isPropertyAccessExpression(node)) {
      const { parent } = node;
      const named = ts.isPropertyAccessExpression(parent) && parent.expression === node;
      const taken = ts.isVariableDeclaration(parent) && ts.isObjectBindingPattern(parent.name);
      meet(checker.getSymbolAtLocation(node.name), named || taken);
    }
    if (ts.isBindingElement(node) && ts.isObjectBindingPattern(node.parent)) {
      const name = (node.propertyName ?? node.name).getText();
      const from = checker.getTypeAtLocation(node.parent);
      // A group that gets a name of its own is met again where that name is used.
      const group = checker.getSymbolAtLocation(node.name);
      meet(from.getProperty(name), group !== undefined && goesOnByName(group, node));
    }
    ts.forEachChild(node, visit);
  };
  /** Whether a variable is only ever followed by a name: `growth.title`. */
  const goesOnByName = (group, binding) => {
    let always = true;
    const look = (node) => {
      if (ts.isIdentifier(node) && node !== binding.name && checker.getSymbolAtLocation(node) === group) {
        const { parent } = node;
        always &&= ts.isPropertyAccessExpression(parent) && parent.expression === node;
      }
      ts.forEachChild(node, look);
    };
    look(binding.getSourceFile());
    return always;
  };
  for (const source of program.getSourceFiles()) {
    const own = source.fileName.startsWith(join(root, "web/")) && !source.fileName.includes("node_modules");
    const words = source.fileName.startsWith(join(root, "web/texts/"));
    const meant = own && isMeant(relative(join(root, "web"), source.fileName));
    if (meant && (!words || source.fileName.endsWith("durations.ts"))) visit(source);
  }
  return used;
}
