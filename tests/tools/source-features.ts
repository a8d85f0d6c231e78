import { globSync } from 'node:fs';
import { join, relative } from 'node:path';
import ts from 'typescript';
import { lackingGlobal, lackingMember } from './compat.ts';
import { root } from './paths.ts';

/** The entry scripts of the pages and the workers. */
const entries = [
  'src/calculators/mount.ts',
  // The mount script finds them by their names.
  ...globSync('src/calculators/*/Calculator.tsx', { cwd: root }),
  ...globSync('src/{axes,call,shop,visit,practice}/app/mount-*.ts', { cwd: root }),
  ...globSync(
    'src/library/{lessons/{mark-steps,show-progress,show-missed,show-final},trainers/drawn-sheets/mount-*}.ts',
    {
      cwd: root,
    },
  ),
  // Fetched by the mount scripts when they are needed.
  ...globSync('src/practice/figures/{mount-figures.ts,*/figure.tsx}', { cwd: root }),
  'src/axes/app/visit-background.ts',
  'src/search/box/search-box.ts',
  'src/offline/register-worker.ts',
  'src/offline/service-worker.ts',
];

interface SourceUse {
  /** `Array.at`, `BroadcastChannel`. */
  feature: string;
  /** `src/visit/storage/tab-channel.ts:34` */
  place: string;
}

interface SourceFeatures {
  /** Browser features in our own scripts that a supported browser lacks; types are known, so no name is ambiguous. */
  young: SourceUse[];
  /** All property names that our own scripts define. */
  ownNames: Set<string>;
}

export function sourceFeatures(): SourceFeatures {
  const config = ts.getParsedCommandLineOfConfigFile(
    join(root, 'tsconfig.json'),
    {},
    { ...ts.sys, onUnRecoverableConfigFileDiagnostic() {} },
  );
  const program = ts.createProgram(
    [join(root, 'src/site/astro-modules.d.ts'), ...entries.map((file) => join(root, file))],
    config?.options ?? {},
  );
  const checker = program.getTypeChecker();
  const young: SourceUse[] = [];
  const ownNames = new Set<string>();
  for (const file of program.getSourceFiles()) {
    if (file.isDeclarationFile || file.fileName.includes('/node_modules/')) continue;
    const visit = (node: ts.Node): void => {
      if (ts.isIdentifier(node)) note(node, file);
      ts.forEachChild(node, visit);
    };
    visit(file);
  }
  return { young, ownNames };

  function note(node: ts.Identifier, file: ts.SourceFile): void {
    const declarations = checker.getSymbolAtLocation(node)?.declarations ?? [];
    const ofBrowser = declarations.filter((one) => program.isSourceFileDefaultLibrary(one.getSourceFile()));
    if (ofBrowser.length === 0) {
      if (declarations.some((one) => one.getSourceFile() === file || /\/src\//.test(one.getSourceFile().fileName)))
        ownNames.add(node.text);
      return;
    }
    if (ts.isPartOfTypeNode(node) || ts.isTypeNode(node.parent)) return;
    const uses = ofBrowser.map((one) => useOf(one, node.text));
    if (!uses.every(({ lackedBy }) => lackedBy.length > 0)) return;
    const { line } = file.getLineAndCharacterOfPosition(node.getStart());
    young.push({ feature: uses[0]?.feature ?? node.text, place: `${relative(root, file.fileName)}:${line + 1}` });
  }
}

/** The feature of a declaration in the language's own libraries: `Array.at`, or the global `structuredClone`. */
function useOf({ parent }: ts.Declaration, name: string): { feature: string; lackedBy: string[] } {
  const holder = holderOf(parent);
  if (holder === undefined) return { feature: name, lackedBy: lackingGlobal(name) };
  return { feature: `${holder}.${name}`, lackedBy: lackingMember(holder, name) };
}

/**
 * The libraries declare members in interfaces (`Array`, `ReadonlyArray`, `ObjectConstructor`) or in the type of a
 * variable.
 */
function holderOf(parent: ts.Node): string | undefined {
  if (ts.isInterfaceDeclaration(parent))
    return parent.name.text.replace(/^Readonly(?=Array|Map|Set)|(?<=\w)Constructor$/g, '');
  if (ts.isTypeLiteralNode(parent) && ts.isVariableDeclaration(parent.parent)) return parent.parent.name.getText();
  return undefined;
}
