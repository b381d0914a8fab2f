/** Pages of the sheet as SVG elements: on screen as pictures of paper, and once more as all that the browser prints. */
import { useEffect, useRef } from 'react';
import { createPortal } from 'react-dom';

/** A page drawn by the engine, where everything that a user typed is escaped. */
export function pageElement(svg: string): SVGSVGElement {
  const { documentElement } = new DOMParser().parseFromString(svg, 'image/svg+xml');
  return document.importNode(documentElement, true) as unknown as SVGSVGElement;
}

function Page({ svg }: { readonly svg: string }) {
  const holder = useRef<HTMLDivElement>(null);
  useEffect(() => {
    holder.current?.replaceChildren(pageElement(svg));
  }, [svg]);
  return <div ref={holder} className="sheet-page" data-testid="sheet-page" />;
}

export function SheetPages({ pages }: { readonly pages: readonly string[] }) {
  return pages.map((svg, i) => <Page key={i} svg={svg} />);
}

function PrintPage({ svg }: { readonly svg: string }) {
  const holder = useRef<HTMLDivElement>(null);
  useEffect(() => {
    holder.current?.replaceChildren(pageElement(svg));
  }, [svg]);
  return <div ref={holder} className="print-page" />;
}

/** Stands beside everything else in the page, seen on paper only. */
export function PrintPages({ pages }: { readonly pages: readonly string[] }) {
  return createPortal(
    <div className="print-pages" aria-hidden="true">
      {pages.map((svg, i) => (
        <PrintPage key={i} svg={svg} />
      ))}
    </div>,
    document.body,
  );
}
