"""Guides of somebody else: nothing outside the project is read, nothing is fetched, nothing is run."""

import re
import subprocess

from bench import DEVICE, GUIDE, PICTURE, with_photo

SECRET = "part body \"tellmenot\"\n" + DEVICE


def hostile_svg(secret):
    return f"""<?xml version="1.0"?>
<?xml-stylesheet href="file://{secret}"?>
<!DOCTYPE svg [<!ENTITY word SYSTEM "file://{secret}"><!ENTITY away SYSTEM "http://127.0.0.1:9/x">]>
<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"
 xmlns:xi="http://www.w3.org/2001/XInclude" viewBox="0 0 80 60">
<style>@import "file://{secret}"; rect {{ fill: url(http://127.0.0.1:9/c) }}</style>
<rect width="80" height="60" style="fill:url(file://{secret}#a)"/>
<image href="file://{secret}" width="9" height="9"/><image xlink:href="http://127.0.0.1:9/d.png" width="9" height="9"/>
<use href="file://{secret}#b"/><use xlink:href="{secret}#b"/>
<xi:include href="file://{secret}" parse="text"/>
<text x="2" y="20">&word;&away;</text>
</svg>
"""


def traced(shop, *arguments, **more):
    """What the program asked the system for."""
    log = shop.top / "calls"
    ran = shop.run(*arguments, before=["strace", "-f", "-s", "4000", "-o", str(log), "-e",
                                       "trace=open,openat,openat2,stat,readlink,socket,connect,execve,execveat,fork,vfork"],
                   **more)
    return ran, log.read_text(errors="replace")


def opened(calls, path):
    return [line for line in calls.splitlines() if re.search(r"\bopen", line) and str(path) in line]


def outside(shop, tally, with_strace):
    """A project `w/mine` without a mark; the current folder is in it."""
    mine = shop.at / "mine"
    shop.put("mine/lamp.mmk", DEVICE)
    secret = shop.put("secret.mmk", SECRET)
    picture = shop.put("secret.svg", PICTURE)
    (mine / "link.mmk").symlink_to("../secret.mmk")
    (mine / "link.svg").symlink_to("../secret.svg")
    (mine / "folder").symlink_to("..")
    names = ["../secret.mmk", str(secret), "link.mmk", "folder/secret.mmk", "x/../../secret.mmk", "../nothing.mmk"]
    pictures = ["../secret.svg", str(picture), "link.svg", "folder/secret.svg"]
    ways = [(name, GUIDE.replace("lamp.mmk", name)) for name in names]
    ways += [(name, with_photo(name)) for name in pictures]
    for name, text in ways:
        shop.put("mine/open.mmk", text)
        for command in (["check", "open.mmk"], ["publish", "open.mmk", "--to", "html,pdf", "-o", "site"]):
            ran = shop.run(*command, cwd=mine)
            tally.check(ran.code == 1 and "outside-project" in ran.told and "--root" in ran.told and
                        "tellmenot" not in ran.told and "open.mmk:" in ran.told, f"{command[0]} of {name}: {ran}")
            tally.check(not (mine / "site").exists(), f"{command[0]} of {name} writes no page")
        if with_strace:
            _, calls = traced(shop, "check", "open.mmk", cwd=mine)
            tally.check(not opened(calls, "secret") and not opened(calls, "link.") and not opened(calls, "folder"),
                        f"{name} is not opened")
    shop.put("mine/open.mmk", with_photo("../secret.svg"))
    tally.check(shop.run("check", "open.mmk", "--root", "..", cwd=mine).code == 0, "--root widens the project")
    tally.check(shop.run("check", "open.mmk", "--root", "nowhere", cwd=mine).code == 2, "--root names a folder")
    tally.check(shop.run("check", "mine/open.mmk").code == 0, "the current folder is the project of what is in it")
    (shop.at / ".git").mkdir()
    tally.check(shop.run("check", "open.mmk", cwd=mine).code == 0, "the folder with .git is the project")
    (shop.at / ".git").rmdir()
    tally.check(shop.run("check", "link.mmk", cwd=mine).code != 2, "a link that is named by hand is followed")
    ran = shop.run("check", ".", cwd=mine)
    tally.check(ran.code == 2 and "link.mmk" in ran.err, f"a link found in a folder is not: {ran}")
    shop.empty()


def pictures(shop, tally, with_strace):
    secret = shop.top / "secret-thing"
    secret.write_text("tellmenot\n")
    shop.with_lamp(with_photo("bad.svg"))
    shop.put("bad.svg", hostile_svg(secret))
    command = ("publish", "open.mmk", "--to", "html,pdf,epub,sheet,markdown,dita", "-o", "site")
    ran, calls = traced(shop, *command) if with_strace else (shop.run(*command), "")
    tally.check(ran.code == 0, f"a hostile drawing is no reason to fail: {ran}")
    made = b"".join(shop.files()[name] for name in shop.files() if name.startswith("site/"))
    tally.check(b"tellmenot" not in made and b"127.0.0.1:9" not in made, "no page holds what a drawing points at")
    drawings = [path for path in shop.files() if path.startswith("site/") and path.endswith(".svg")]
    tally.check(all(b"file:" not in shop.files()[name] for name in drawings), "nor its address")
    if with_strace:
        tally.check(not opened(calls, "secret-thing"), "what a drawing points at is not opened")
        tally.check(not re.search(r"\b(socket|connect)\(", calls), "publishing asks for no network")
        tally.check(len(re.findall(r"\bexecve(?:at)?\(", calls)) == 1 and "fork(" not in calls, "publishing runs nothing")
        for words in (["check", "."], ["mend", "open.mmk"], ["draft", "lamp.mmk", "--goal", "replace board"]):
            _, calls = traced(shop, *words)
            tally.check(not re.search(r"\b(socket|connect)\(", calls) and
                        len(re.findall(r"\bexecve(?:at)?\(", calls)) == 1, f"{words[0]}: no network, nothing run")
    if subprocess.run(["sh", "-c", "command -v unzip"], capture_output=True, check=False).returncode == 0:
        book = next((shop.at / "site").glob("*.epub"))
        inside = subprocess.run(["unzip", "-p", str(book)], capture_output=True, check=False).stdout
        tally.check(b"tellmenot" not in inside and b"127.0.0.1:9" not in inside, "nor does the book")
    shop.empty()


def policy(shop, tally):
    shop.with_lamp()
    shop.run("publish", "open.mmk", "--to", "html,sheet", "-o", "site")
    shop.run("appraise", "lamp.mmk", "--html", "-o", "site")
    shop.run("compare", "open.mmk", "open.mmk", "--html", "-o", "site/changes.html")
    pages = list((shop.at / "site").glob("*.html"))
    tally.check(len(pages) >= 4, f"pages are made: {pages}")
    for page in pages:
        text = page.read_text()
        found = re.search(r'<meta http-equiv="Content-Security-Policy" content="([^"]*)"', text)
        rules = found.group(1) if found else ""
        scripts = "<script" not in text or "script-src 'sha256-" in rules
        tally.check("default-src 'none'" in rules and scripts and "script-src 'unsafe" not in rules and
                    "http:" not in rules, f"{page.name} has a content security policy: {rules}")
    shop.empty()


def run(shop, tally, with_strace):
    outside(shop, tally, with_strace)
    pictures(shop, tally, with_strace)
    policy(shop, tally)
