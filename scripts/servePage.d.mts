export declare const servePage: () => Promise<{ url: string; folder: string; close: () => Promise<void> }>;
