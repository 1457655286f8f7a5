import { parse } from 'svelte/compiler';
import ts from 'typescript';

/**
 * The strings of a program, each as one text: what is computed inside a template or a sum stands as `…`, and what
 * it is computed from is read on its own. Imports, types and faults are left out.
 */
export function scriptPassages(text: string): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return;
    if (ts.isLiteralTypeNode(node) || isThrown(node)) return;
    const whole = wholeText(node);
    if (whole !== null) found.push(whole);
    ts.forEachChild(node, whole === null ? visit : visitComputed);
  };
  // below a string that has been read: only what it computes is still to be read
  const visitComputed = (node: ts.Node): void => {
    if (ts.isStringLiteralLike(node)) return;
    if (ts.isTemplateSpan(node)) visit(node.expression);
    else if (wholeText(node) !== null) ts.forEachChild(node, visitComputed);
    else if (!ts.isTemplateHead(node) && node.kind !== ts.SyntaxKind.PlusToken) visit(node);
  };
  visit(ts.createSourceFile('a.ts', text, ts.ScriptTarget.Latest));
  return found;
}

/** A string, a template or a sum of such as one text; null for anything else. */
function wholeText(node: ts.Node): string | null {
  if (ts.isStringLiteralLike(node)) return node.text;
  if (ts.isTemplateExpression(node)) {
    return node.head.text + node.templateSpans.map(({ literal }) => `…${literal.text}`).join('');
  }
  if (ts.isBinaryExpression(node) && node.operatorToken.kind === ts.SyntaxKind.PlusToken) {
    const [left, right] = [wholeText(node.left), wholeText(node.right)];
    if (left !== null || right !== null) return (left ?? '…') + (right ?? '…');
  }
  return null;
}

function isThrown(node: ts.Node): boolean {
  return ts.isThrowStatement(node);
}

type TreeNode = Record<string, unknown>;

/** The text between the tags of a component, its attributes and its strings. */
export function componentPassages(text: string): string[] {
  const found: string[] = [];
  const root = parse(text, { modern: true });
  readMarkup(root.fragment as unknown as TreeNode, found);
  for (const script of [root.instance, root.module]) {
    if (script) {
      const { start, end } = script.content as unknown as { start: number; end: number };
      found.push(...scriptPassages(text.slice(start, end)));
    }
  }
  return found;

  /** Text and what is computed between two tags is one passage; what is computed is read too. */
  function readMarkup(fragment: TreeNode, into: string[]): void {
    let passage = '';
    const close = () => {
      if (passage !== '') into.push(passage);
      passage = '';
    };
    for (const node of fragment.nodes as TreeNode[]) {
      if (node.type === 'Text') passage += String(node.data);
      else if (node.type === 'ExpressionTag') {
        passage += '…';
        into.push(...expressionPassages(node));
      } else if (isInline(node)) {
        const inner: string[] = [];
        readMarkup(node.fragment as TreeNode, inner);
        passage += inner.join(' ') || '…';
      } else {
        if (isBlock(node) || isShown(node)) passage += '…';
        else close();
        into.push(...below(node));
      }
    }
    close();
  }

  function below(node: TreeNode): string[] {
    const inner: string[] = [];
    for (const [key, value] of Object.entries(node)) {
      if (key === 'attributes') {
        for (const attribute of value as TreeNode[]) inner.push(...attributePassages(attribute));
      } else if (isFragment(value)) readMarkup(value, inner);
      else if (isExpression(value)) inner.push(...scriptPassages(`(${slice(value)})`));
    }
    return inner;
  }

  function attributePassages(attribute: TreeNode): string[] {
    if (attribute.type !== 'Attribute' || notRead.has(String(attribute.name))) return [];
    const parts = [attribute.value].flat() as (TreeNode | true)[];
    const whole = parts.map((part) =>
      part === true ? '' : part.type === 'Text' ? String(part.data) : '…',
    );
    const computed = parts.flatMap((part) =>
      part !== true && part.type === 'ExpressionTag' ? expressionPassages(part) : [],
    );
    return [whole.join(''), ...computed];
  }

  function expressionPassages(node: TreeNode): string[] {
    return scriptPassages(`(${slice(node.expression as TreeNode)})`);
  }

  function slice(node: TreeNode): string {
    return text.slice(node.start as number, node.end as number);
  }
}

function isFragment(value: unknown): value is TreeNode {
  return (value as TreeNode | null)?.type === 'Fragment';
}

function isExpression(value: unknown): value is TreeNode {
  return /Expression$|Literal$/.test(String((value as TreeNode | null)?.type));
}

function isInline(node: TreeNode): boolean {
  return node.type === 'RegularElement' && inline.has(String(node.name));
}

/** A component with nothing inside it, such as a value: part of the sentence around it. */
function isShown(node: TreeNode): boolean {
  return node.type === 'Component' && (node.fragment as { nodes: unknown[] }).nodes.length === 0;
}

function isBlock(node: TreeNode): boolean {
  return /Block$/.test(String(node.type));
}

/** The paragraphs, list items and cells of a Markdown file, without what stands in code. */
export function markdownPassages(text: string): string[] {
  const withoutCode = text.replace(/^```[\s\S]*?^```$/gm, '');
  const passages = withoutCode.split(/\n\s*\n|\n(?=[-|#] ?)/);
  return passages.flatMap((passage) =>
    passage.startsWith('|') ? passage.split('|') : [passage.replace(/^[-#>]+ /, '')],
  );
}

const inline = new Set(['em', 'strong', 'b', 'i', 'span', 'a', 'output', 'abbr', 'code']);
const notRead = new Set(['class', 'style', 'id', 'name', 'd', 'points', 'transform', 'viewBox']);
