// What the preview adds to the look of a page: findings, and the means to place marks.
#pragma once

namespace matchmark::serve {

// Black on white, ruled, as the page itself; nothing is said by colour alone.
inline constexpr const char* preview_style = R"css(
.findings{border:3px solid var(--ink);padding:0 1rem .4rem;margin-bottom:1.5rem}
.findings h2{margin:0 -1rem 1rem}
.findings ul{list-style:none;padding:0}
.findings li{padding:.3rem 0}
.finding{border:2px solid var(--ink);border-left-width:.6rem;padding:.5rem .8rem .1rem;
margin:0 0 .8rem;font-size:1rem}
.finding.warning{border-left-style:double}
.finding.advice{border-width:1px 1px 1px .3rem}
.finding p,.finding pre{margin:0 0 .4rem}
.finding pre{background:var(--soft);padding:.3rem .6rem}
.finding-word{text-transform:uppercase;border:2px solid var(--ink);padding:.05rem .4rem;
margin-right:.4rem;letter-spacing:.04em}
.finding-foot{border-top:1px solid var(--line);padding-top:.3rem}
code,pre{font-family:"Liberation Mono","DejaVu Sans Mono",monospace;font-size:.95em}
.guides li{padding:.25rem 0}
html:has(.taken-back) .sheet{padding-bottom:8rem}
.face{position:relative;width:min(100%,max(var(--across),34rem));background:#fff;
border:1px solid var(--line)}
.face img{display:block;width:100%;height:100%}
.surface{position:absolute}
.picture{position:relative}
.layer{position:absolute;inset:0;cursor:crosshair;touch-action:none;outline:2px dashed #000;
outline-offset:-2px;box-shadow:inset 0 0 0 4px #fff}
.new-mark{position:absolute;width:28px;height:28px;min-height:0;margin:-14px 0 0 -14px;padding:0;
border:2px solid #000;border-radius:0;background:#fff;color:#000;font-size:15px;font-weight:700;
line-height:22px;text-align:center;cursor:move;touch-action:none;transform:translate(20px,-20px)}
.new-mark::after{content:"";position:absolute;left:-12px;top:26px;width:14px;height:2px;
background:#000;transform:rotate(-45deg);box-shadow:0 0 0 1px #fff}
.new-mark::before{content:"";position:absolute;left:-12px;top:30px;width:8px;height:8px;
border-radius:50%;background:#000;box-shadow:0 0 0 1.5px #fff}
.new-mark:focus-visible{outline:3px solid #000;outline-offset:2px}
.placing{flex:1 1 100%;border:2px solid var(--ink);padding:.6rem .8rem;margin:.4rem 0 .8rem;
font-size:1rem;display:flex;flex-wrap:wrap;gap:.5rem 1rem;align-items:center}
.placing p{flex:1 1 100%;margin:0}
.placing select{font:inherit;color:inherit;background:var(--paper);border:2px solid var(--ink);
padding:.2rem .4rem;min-height:2rem;max-width:100%}
.placing label{display:flex;gap:.5rem;align-items:center;flex-wrap:wrap}
.place{margin:.4rem 0;align-self:start}
.taken-back{position:fixed;z-index:3;left:0;right:0;bottom:0;background:var(--paper);
border-top:3px solid var(--ink);padding:.4rem 1rem;display:flex;flex-wrap:wrap;gap:.3rem 1rem;
align-items:center;justify-content:center;font-size:1rem}
html:has(.taken-back){scroll-padding-bottom:5rem}
.told-by-preview{position:fixed;z-index:4;right:1rem;bottom:4rem;margin:0;background:var(--ink);
color:var(--paper);padding:.3rem .8rem;font-size:1rem;max-width:30rem}
.told-by-preview:empty{display:none}
@media print{.findings,.finding,.place,.placing,.taken-back,.told-by-preview{display:none}}
)css";

} // namespace matchmark::serve
