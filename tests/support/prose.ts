import { parse } from 'svelte/compiler';
import ts from 'typescript';
import type { ProjectFile } from './projectFiles.ts';

/**
 * What a person may read on a screen or in a terminal: the strings of a TypeScript file, or the text,
 * attributes and strings of a component. Only those with a space in them: the rest are keys and names.
 */
export function proseOf({ path, text }: ProjectFile): string[] {
  const strings = path.endsWith('.svelte') ? componentStrings(text) : scriptStrings(path, text);
  return strings.map((string) => string.trim()).filter((string) => /\s/.test(string));
}

/** The text between the tags of a component, single words too. */
export function markupText({ text }: ProjectFile): string[] {
  const found: string[] = [];
  walk(parse(text, { modern: true }).fragment, (node) => {
    if (node.type === 'Text') found.push(String(node.data));
    return node.type !== 'Attribute';
  });
  return found.map((string) => string.trim()).filter((string) => string !== '');
}

function scriptStrings(path: string, text: string): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return;
    if (ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddle(node)) {
      found.push(node.text);
    } else if (ts.isTemplateTail(node)) {
      found.push(node.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(path, text, ts.ScriptTarget.Latest));
  return found;
}

function componentStrings(text: string): string[] {
  const found: string[] = [];
  walk(parse(text, { modern: true }), (node) => {
    if (node.type === 'ImportDeclaration' || node.type === 'StyleSheet') return false;
    if (node.type === 'Attribute' && notRead.has(String(node.name))) return false;
    if (node.type === 'Text') found.push(String(node.data));
    if (node.type === 'Literal' && typeof node.value === 'string') found.push(node.value);
    if (node.type === 'TemplateElement') {
      found.push((node.value as { cooked: string | null }).cooked ?? '');
    }
    return true;
  });
  return found;
}

type TreeNode = Record<string, unknown>;

/** Visits a syntax tree from the top; `enter` gives false to leave out what is below a node. */
function walk(node: unknown, enter: (node: TreeNode) => boolean): void {
  if (Array.isArray(node)) {
    for (const child of node) walk(child, enter);
  } else if (typeof node === 'object' && node !== null) {
    if (!enter(node as TreeNode)) return;
    for (const [key, child] of Object.entries(node)) {
      if (key !== 'loc' && key !== 'metadata') walk(child, enter);
    }
  }
}

const notRead = new Set(['class', 'style', 'id', 'name', 'd', 'points', 'transform', 'viewBox']);
